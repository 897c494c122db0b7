"""Temperatures are given by naming the unit: celsius=, fahrenheit= or kelvin=."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from ._core import Problem
from .errors import InputError
from .units import is_quantity, magnitude

ICE_POINT_K = 273.15

_NUMBER = "give a number, for instance celsius=1120"
_SERIES = "give a series, for instance celsius=range(900, 1231, 5)"
_UNITS = {"celsius": "degC", "fahrenheit": "degF", "kelvin": "kelvin"}


def _error(what: str, remedy: str) -> InputError:
    return InputError([Problem("gibbsteel.input.211", "temperature", what, remedy)])


def refuse_without_unit(values: tuple[Any, ...], example: str) -> None:
    """Raises InputError for temperatures that were given without naming the unit."""
    if values:
        what = "got " + ", ".join(map(repr, values)) + " without a unit"
        raise _error(what, f"give the unit: {example}")


def _to_kelvin(name: str, value: float) -> float:
    if name == "celsius":
        return value + ICE_POINT_K
    if name == "fahrenheit":
        return (value - 32.0) / 1.8 + ICE_POINT_K
    return value


def _the_one(given: dict[str, Any]) -> tuple[str, Any]:
    chosen = {name: value for name, value in given.items() if value is not None}
    if len(chosen) != 1:
        names = " and ".join(f"{name}=" for name in chosen)
        raise _error(
            f"got {names}" if chosen else "got none",
            "give exactly one of celsius=, fahrenheit= and kelvin=",
        )
    return next(iter(chosen.items()))


def _number(name: str, value: Any) -> float:
    if is_quantity(value):
        remedy = "give a temperature, or a number"
        return magnitude(value, _UNITS[name], "temperature", remedy)
    if isinstance(value, (str, bytes)):
        raise _error(f"{name}={value!r} is text, not a number", _NUMBER)
    try:
        return float(value)
    except (TypeError, ValueError):
        raise _error(f"{name}={value!r} is not a number", _NUMBER) from None


def given_unit(**given: Any) -> str:
    """The keyword that is given; ``"celsius"`` when none is."""
    return next((name for name, v in given.items() if v is not None), "celsius")


def one_kelvin(**given: Any) -> float:
    """The single temperature among the given keywords [K]."""
    name, value = _the_one(given)
    return _to_kelvin(name, _number(name, value))


def one_with_unit(**given: Any) -> tuple[float, str]:
    """`one_kelvin`, and the unit that it was given in."""
    return one_kelvin(**given), given_unit(**given)


def many_kelvin(**given: Any) -> list[float]:
    """The sequence of temperatures among the given keywords [K]."""
    name, values = _the_one(given)
    if isinstance(values, (str, bytes)) or not isinstance(values, Iterable):
        raise _error(f"{name}={values!r} is no series of temperatures", _SERIES)
    return [_to_kelvin(name, _number(name, value)) for value in values]

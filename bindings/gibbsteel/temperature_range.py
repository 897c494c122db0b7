"""A range of temperatures to search: a pair with its unit."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from . import _core
from ._core import ParameterSet, Problem
from .errors import InputError
from .temperature import given_unit, many_kelvin

_REMEDY = "give the low and the high end, for instance celsius=(700, 1250)"


def kelvin_range(parameters: ParameterSet, **given: Any) -> tuple[float, float]:
    """The pair among the given keywords [K].

    700 to 1250 C, as far as the parameter file goes, when none is given.
    """
    chosen = {name: value for name, value in given.items() if value is not None}
    if not chosen:
        return _core.usual_range(parameters)
    for name, pair in chosen.items():
        if isinstance(pair, (str, bytes)) or not isinstance(pair, Iterable):
            raise _no_pair(name, pair)
        chosen[name] = list(pair)
        if len(chosen[name]) != 2:
            raise _no_pair(name, pair)
    low, high = many_kelvin(**chosen)
    return low, high


def range_and_unit(
    parameters: ParameterSet, **given: Any
) -> tuple[tuple[float, float], str]:
    """`kelvin_range`, and the unit that it was given in."""
    return kelvin_range(parameters, **given), given_unit(**given)


def _no_pair(name: str, value: Any) -> InputError:
    what = f"{name}={value!r} is no pair of temperatures"
    return InputError([Problem("gibbsteel.input.211", "temperature", what, _REMEDY)])

"""Soaks over two swept variables, from keywords to the compiled grid."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from . import _core
from ._core import Problem, SoakGrid, SweptVariable
from .errors import InputError
from .progress import Callback, reporting
from .temperature import many_kelvin, one_kelvin

_REMEDY = "give a series of weight percents, for instance C=[0.50, 0.55, 0.60]"


def _is_series(value: Any) -> bool:
    """True for lists, ranges, arrays with a length; not for numbers and texts."""
    if isinstance(value, (str, bytes)) or getattr(value, "ndim", 1) == 0:
        return False
    return isinstance(value, Iterable)


def _swept_element(symbol: str, values: Any) -> SweptVariable:
    try:
        if not _is_series(values):
            raise TypeError
        numbers = [float(value) for value in values]
    except (TypeError, ValueError):
        what = f"is {values!r}, no series of numbers"
        raise InputError(
            [Problem("gibbsteel.input.296", symbol, what, _REMEDY)]
        ) from None
    return SweptVariable(element=symbol, weight_percent=numbers)


def _temperature(given: Mapping[str, Any]) -> tuple[SweptVariable | None, float | None]:
    """The swept temperature, or the single one [K]."""
    if any(_is_series(value) for value in given.values()):
        return SweptVariable._temperature(many_kelvin(**given)), None
    return None, one_kelvin(**given)


def run_grid(
    steel: _core.CompiledSteel,
    elements: Mapping[str, Any],
    temperatures: Mapping[str, Any],
    options: _core.SoakOptions,
    progress: bool | Callback,
) -> SoakGrid:
    """Soaks at every pair of values; see `gibbsteel.Steel.grid`."""
    swept, kelvin = _temperature(temperatures)
    variables = [_swept_element(symbol, v) for symbol, v in elements.items()]
    if swept is not None:
        variables.append(swept)
    if len(variables) != 2:
        names = ", ".join(variable.name for variable in variables) or "nothing"
        remedy = "sweep two, for instance grid(C=[0.5, 0.6], Co=[0, 2], celsius=1120)"
        what = f"sweeps {names}"
        raise InputError([Problem("gibbsteel.input.295", "grid", what, remedy)])
    first, second = variables
    with reporting(progress, len(first) * len(second)) as callback:
        return _core.soak_grid(steel, first, second, kelvin, options, callback)

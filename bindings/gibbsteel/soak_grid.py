"""Soaks over two swept variables: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from . import _core
from ._core import Problem, SoakGrid, SolveOptions, SweptVariable
from .errors import InputError
from .progress import Callback, reporting
from .soak_options import soak_options
from .temperature import given_unit, many_kelvin, one_kelvin, refuse_without_unit

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


def _run_grid(
    steel: _core.CompiledSteel,
    elements: Mapping[str, Any],
    temperatures: Mapping[str, Any],
    options: _core.SoakOptions,
    progress: bool | Callback,
) -> SoakGrid:
    """Soaks at every pair of values."""
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


class GridMethods:
    """What `Steel` can do over two swept variables."""

    _core: _core.CompiledSteel

    def grid(
        self,
        *without_unit: Any,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        progress: bool | Callback = False,
        graphite: bool = False,
        phases: str | Sequence[str] | None = None,
        suppressed: str | Sequence[str] = (),
        at_soak_temperature: bool = False,
        options: SolveOptions | None = None,
        **elements: Iterable[float],
    ) -> SoakGrid:
        """Soaks over two swept variables: two elements, or one and the temperature.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : float or iterable of float
            Exactly one of them. A series sweeps the temperature, which is then the
            second variable.
        **elements : iterable of float
            Weight percents to sweep, balance Fe, for instance ``C=[0.50, 0.55]``.

        The other parameters are those of `sweep`. Ctrl-C, or Stop in a notebook, ends
        the work early: the cells that were not done are then None.

        Returns
        -------
        SoakGrid
            One state per pair of values.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75}, name="heat 7")
        >>> steel.grid(C=[0.5, 0.6], celsius=range(1000, 1101, 50)).shape
        (2, 3)
        """
        refuse_without_unit(without_unit, "grid(C=[0.5, 0.6], celsius=[1100, 1150])")
        given = {"celsius": celsius, "fahrenheit": fahrenheit, "kelvin": kelvin}
        unit = given_unit(**given)
        chosen = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        return _run_grid(self._core, elements, given, chosen, progress)

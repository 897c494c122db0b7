"""Steels, or soaks of one steel, side by side."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from . import _core
from ._core import Comparison, Problem, ShortSoak, State
from .errors import InputError
from .steel import Steel
from .target_quantity import QuantityLike, as_list, as_quantity, require_known
from .temperature import given_unit, many_kelvin

_REMEDY = "give states, short soaks or steels"


def compare(
    items: State | ShortSoak | Steel | Iterable[State | ShortSoak | Steel],
    *,
    celsius: float | Iterable[float] | None = None,
    fahrenheit: float | Iterable[float] | None = None,
    kelvin: float | Iterable[float] | None = None,
    quantities: QuantityLike | Iterable[QuantityLike] = (),
) -> Comparison:
    """States side by side: carbides, matrix, carbon activity, and what is asked for.

    Parameters
    ----------
    items : State, ShortSoak or Steel, or iterable of them
        A steel is soaked at every temperature given.
    celsius, fahrenheit, kelvin : float or iterable of float, optional
        Needed for steels, in one unit.
    quantities : Quantity or callable, or sequence of them
        Further rows of the table, for instance ``gs.quantities.hardness_hrc()``.

    Returns
    -------
    Comparison
        Prints as a table; ``to_frame()`` and ``to_csv()`` give one row per state.

    Raises
    ------
    InputError
        Nothing to compare, a steel without a temperature, something else in the list;
        an element or a kind of phase that a parameter file lacks.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75}, name="heat 7")
    >>> both = gs.compare([steel, steel.changed(C=0.65, name="heat 8")], celsius=1100)
    >>> [state.steel for state in both.states]
    ['heat 7', 'heat 8']
    """
    given = {"celsius": celsius, "fahrenheit": fahrenheit, "kelvin": kelvin}
    at = {unit: _listed(values) for unit, values in given.items()}
    rows = [as_quantity(quantity) for quantity in as_list(quantities)]
    items = [items] if isinstance(items, (State, ShortSoak, Steel)) else list(items)
    for item in items:
        if isinstance(item, Steel):
            require_known(rows, item.parameters)
    states: list[State] = []
    for item in items:
        if isinstance(item, State):
            states.append(item)
        elif isinstance(item, ShortSoak):
            states.append(item.state)
        elif isinstance(item, Steel):
            states.extend(item.sweep(**at).states)
        else:
            what = f"holds {item!r}"
            raise InputError([Problem("gibbsteel.input.267", "items", what, _REMEDY)])
    return _core.compare(states, rows, given_unit(**given))


def _listed(values: Any) -> Any:
    """A single temperature as a list of one."""
    if values is None or isinstance(values, Iterable):
        return values
    return [values]

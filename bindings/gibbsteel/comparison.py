"""Steels, or soaks of one steel, side by side."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, Any

from . import _core
from ._core import Comparison, Problem, ShortSoak, State
from .errors import InputError
from .frames import state_columns
from .steel import Steel
from .target_quantity import QuantityLike, as_quantity
from .temperature import given_unit

if TYPE_CHECKING:
    import pandas as pd

_REMEDY = "give states, short soaks or steels"


def compare(
    items: State | ShortSoak | Steel | Iterable[State | ShortSoak | Steel],
    *,
    celsius: float | Iterable[float] | None = None,
    fahrenheit: float | Iterable[float] | None = None,
    quantities: Sequence[QuantityLike] = (),
) -> Comparison:
    """States side by side: carbides, matrix, carbon activity, and what is asked for.

    Parameters
    ----------
    items : State, ShortSoak or Steel, or iterable of them
        A steel is soaked at every temperature given.
    celsius, fahrenheit : float or iterable of float, optional
        Needed for steels, in one unit.
    quantities : sequence of Quantity or callable
        Further rows of the table, for instance ``gs.quantities.hardness_hrc()``.

    Returns
    -------
    Comparison
        Prints as a table; ``to_frame()`` is one row per state.

    Raises
    ------
    InputError
        Nothing to compare, a steel without a temperature, something else in the list.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75}, name="heat 7")
    >>> both = gs.compare([steel, steel.changed(C=0.65, name="heat 8")], celsius=1100)
    >>> [state.steel for state in both.states]
    ['heat 7', 'heat 8']
    """
    states: list[State] = []
    if isinstance(items, (State, ShortSoak, Steel)):
        items = [items]
    for item in items:
        if isinstance(item, State):
            states.append(item)
        elif isinstance(item, ShortSoak):
            states.append(item.state)
        elif isinstance(item, Steel):
            at = {"celsius": _listed(celsius), "fahrenheit": _listed(fahrenheit)}
            states.extend(item.sweep(**at).states)
        else:
            what = f"holds {item!r}"
            raise InputError([Problem("gibbsteel.input.267", "items", what, _REMEDY)])
    unit = given_unit(celsius=celsius, fahrenheit=fahrenheit)
    return _core.compare(states, [as_quantity(q) for q in quantities], unit)


def _listed(values: Any) -> Any:
    """A single temperature as a list of one."""
    if values is None or isinstance(values, Iterable):
        return values
    return [values]


def comparison_to_frame(comparison: Comparison) -> pd.DataFrame:
    """Table of a comparison, one row per state; units are in the column names.

    Parameters
    ----------
    comparison : Comparison

    Returns
    -------
    pandas.DataFrame
        Steel, temperature, one column for every row of the comparison, and how far to
        trust the state, as in `Sweep.to_frame`.
    """
    rows = []
    for i, state in enumerate(comparison.states):
        numbers = {row.label: row.values[i] for row in comparison.rows}
        rows.append((state, numbers))
    return state_columns(rows)

"""Carbide volume against the soak temperature."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, Any

from .._core import State, Sweep
from ..rows import other_kinds_of
from .axes import (
    heading,
    markers,
    no_such_option,
    own_or_given,
    room_on_top,
    temperature_axis,
)
from .cautions import cautions_of, not_usable
from .phase_styles import in_order, style_of_phase
from .stack import draw_stack
from .sweeps import celsius_of, notes_of, states_of, title_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_TOTAL = {"color": "#101010", "linewidth": 1.8}


def carbides(
    sweep: Sweep,
    kind: str = "stacked",
    *,
    ax: Axes | None = None,
    fahrenheit: bool = False,
    **kw: Any,
) -> Axes:
    """Volume percent of each kind of carbide against the soak temperature.

    Parameters
    ----------
    sweep : Sweep
        Soaks of one steel, in any order.
    kind : str
        ``"stacked"``: areas on top of one another; the upper edge is the total.
        ``"lines"``: one line per kind, and the total. Graphite and liquid are no
        carbide: lines in both, and not in the total.
    ax : matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
    fahrenheit : bool
        Adds a second temperature scale in degrees Fahrenheit on top.
    **kw
        Passed on to the areas or lines, for instance ``alpha=0.8``.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    InputError
        What is given is no sweep or holds no soaks; another `kind`.

    Notes
    -----
    Soaks without a usable result leave a gap. Warnings of the soaks are bars above the
    data, over the temperatures that they hold for. The numbers are the long-hold limit.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> steel = gs.Steel({"C": 0.9, "Cr": 4.1, "Mo": 5, "W": 6.2, "V": 1.9})
    >>> ax = gs.plot.carbides(steel.sweep(celsius=range(1000, 1201, 50)))
    >>> ax.get_ylabel()
    'carbide in the steel [vol%]'
    """
    if kind not in ("stacked", "lines"):
        raise no_such_option("kind", kind, ("stacked", "lines"))
    states = states_of(sweep)
    ax = own_or_given(ax)
    celsius = celsius_of(states)
    columns = _volumes(states, sweep.carbide_kinds)
    others = _volumes(states, other_kinds_of(states))
    total = [state.carbide_volume_percent for state in states]
    raised = temperature_axis(ax, celsius, fahrenheit)
    if kind == "stacked":
        handles = draw_stack(ax, celsius, columns, kw)
        handles += _draw_lines(ax, celsius, others, {})
    else:
        handles = _draw_lines(ax, celsius, {**columns, **others}, kw)
    style = dict(_TOTAL, marker="o" if len(states) == 1 else "")
    handles += ax.plot(celsius, total, label="all carbides", **style)
    ax.set_ylabel(f"{', '.join(['carbide', *others])} in the steel [vol%]")
    shown = [x for values in (total, *others.values()) for x in values]
    highest = max((x for x in shown if not math.isnan(x)), default=0.0)
    heading(ax, title_of(states), notes_of(states, volumes=True), raised)
    room_on_top([(ax, highest)], handles, cautions_of(states), not_usable(states))
    return ax


def _volumes(states: Sequence[State], kinds: Iterable[str]) -> dict[str, list[float]]:
    """Kind -> volume percents, in the order of stacking."""
    return {
        kind: [state.volume_percent_of(kind) for state in states]
        for kind in in_order(kinds)
    }


def _only_where_present(values: Sequence[float]) -> list[float]:
    """Zeros become NaN, save those beside a number that is not: where a line ends."""
    padded = [0.0, *values, 0.0]
    return [
        here if any(padded[i : i + 3]) else math.nan for i, here in enumerate(values)
    ]


def _draw_lines(
    ax: Axes,
    celsius: Sequence[float],
    columns: dict[str, list[float]],
    kw: dict[str, Any],
) -> list[Any]:
    handles: list[Any] = []
    for i, (name, values) in enumerate(columns.items()):
        style = style_of_phase(name).of_line()
        style["markevery"] = markers(len(celsius), i)
        shown = _only_where_present(values)
        handles += ax.plot(celsius, shown, label=name, **{**style, **kw})
    return handles

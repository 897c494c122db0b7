"""Matrix composition against the soak temperature."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from .._core import State, Sweep
from ..names import as_names
from .axes import (
    heading,
    mark_not_usable,
    markers,
    no_such_option,
    own_or_given,
    room_on_top,
    temperature_axis,
)
from .cautions import cautions_of, not_usable
from .element_styles import style_of_element
from .sweeps import celsius_of, notes_of, states_of, title_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def matrix(
    sweep: Sweep,
    elements: str | Sequence[str] | None = None,
    *,
    ax: Axes | None = None,
    carbon_ax: Axes | None = None,
    fahrenheit: bool = False,
    **kw: Any,
) -> Axes:
    """Composition of the matrix against the soak temperature.

    Parameters
    ----------
    sweep : Sweep
        Soaks of one steel, in any order.
    elements : str or sequence of str, optional
        All but iron when left out.
    ax : matplotlib.axes.Axes, optional
        Where to draw the alloying elements; a new figure when left out.
    carbon_ax : matplotlib.axes.Axes, optional
        Where to draw carbon, which is about ten times less: a panel of its own. When
        left out, carbon has its own scale on the right of `ax`.
    fahrenheit : bool
        Adds a second temperature scale in degrees Fahrenheit on top.
    **kw
        Passed on to the lines, for instance ``linewidth=1``.

    Returns
    -------
    matplotlib.axes.Axes
        Those of the alloying elements.

    Raises
    ------
    InputError
        What is given is no sweep or holds no soaks; an element that the steel lacks.

    Notes
    -----
    The matrix is all matrix phases together, mass-weighted. Gaps and bars are those of
    `carbides`.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> steel = gs.Steel({"C": 0.9, "Cr": 4.1, "Mo": 5, "W": 6.2, "V": 1.9})
    >>> ax = gs.plot.matrix(steel.sweep(celsius=range(1000, 1201, 50)))
    >>> ax.get_ylabel()
    'alloying elements in the matrix [wt%]'
    """
    states = states_of(sweep)
    chosen = _chosen(states, elements)
    ax = own_or_given(ax)
    celsius = celsius_of(states)
    raised = temperature_axis(ax, celsius, fahrenheit)
    right = _carbon_axes(ax, carbon_ax) if "C" in chosen and len(chosen) > 1 else ax
    handles: list[Any] = []
    highest = {ax: 0.0, right: 0.0}
    for i, symbol in enumerate(chosen):
        on = right if symbol == "C" else ax
        values = _column(states, symbol)
        handles += on.plot(celsius, values, **_look(symbol, i, celsius, kw))
        highest[on] = max([highest[on], *(x for x in values if not math.isnan(x))])
    ax.set_ylabel("alloying elements in the matrix [wt%]")
    if chosen[0] == "C":
        right.set_ylabel("carbon in the matrix [wt%]")
    gaps = not_usable(states)
    heading(ax, title_of(states), notes_of(states), raised)
    if right is not ax and carbon_ax is None:
        handles[0].set_label("C (right)")
    elif right is not ax:  # a panel of its own: neither legend nor room for one
        handles = handles[1:]
        right.set_xlim(ax.get_xlim())
        mark_not_usable(right, gaps)
        right.set_ylim(0.0, 1.05 * (highest.pop(right) or 1.0))
    room_on_top(list(highest.items()), handles, cautions_of(states), gaps)
    return ax


def _carbon_axes(ax: Axes, carbon_ax: Axes | None) -> Axes:
    return ax.twinx() if carbon_ax is None else own_or_given(carbon_ax)


def _chosen(states: Sequence[State], elements: str | Sequence[str] | None) -> list[str]:
    """The elements to draw, carbon first."""
    given = states[0].analysis.modelled
    known = [symbol for symbol, percent in given.items() if percent > 0.0]
    if elements is None:
        chosen = [symbol for symbol in known if symbol != "Fe"]
    else:
        chosen = as_names(elements)
    for symbol in chosen:
        if symbol not in known:
            raise no_such_option("elements", symbol, known)
    return sorted(chosen, key=lambda symbol: symbol != "C")


def _column(states: Sequence[State], symbol: str) -> list[float]:
    """Weight percent in the matrix; NaN where a state is not usable."""
    return [state.matrix.weight_percent.get(symbol, math.nan) for state in states]


def _look(
    symbol: str, i: int, celsius: Sequence[float], kw: dict[str, Any]
) -> dict[str, Any]:
    look = style_of_element(symbol).of_line()
    look["markevery"] = markers(len(celsius), i)
    if symbol == "C":
        look["linewidth"] = 2.4
    return {"label": symbol, **look, **kw}

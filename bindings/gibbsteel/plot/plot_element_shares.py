"""How an element, carbon first of all, is shared between matrix and carbides."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from .._core import Sweep
from .axes import heading, own_or_given, room_on_top, temperature_axis
from .cautions import cautions_of, not_usable
from .phase_styles import in_order
from .stack import draw_stack
from .sweeps import celsius_of, notes_of, states_of, title_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def element_shares(
    sweep: Sweep,
    element: str,
    *,
    ax: Axes | None = None,
    fahrenheit: bool = False,
    **kw: Any,
) -> Axes:
    """Where the atoms of an element are, against the soak temperature.

    Parameters
    ----------
    sweep : Sweep
        Soaks of one steel, in any order.
    element : str
        Symbol, for instance ``"V"``.
    ax : matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
    fahrenheit : bool
        Adds a second temperature scale in degrees Fahrenheit on top.
    **kw
        Passed on to the areas, for instance ``alpha=0.8``.

    Returns
    -------
    matplotlib.axes.Axes
        Percent of that element in the steel, the matrix at the bottom.

    Raises
    ------
    InputError
        What is given is no sweep or holds no soaks; the steel has none of the element.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> steel = gs.Steel({"C": 0.9, "Cr": 4.1, "Mo": 5, "W": 6.2, "V": 1.9})
    >>> sweep = steel.sweep(celsius=range(1000, 1201, 50))
    >>> gs.plot.element_shares(sweep, "V").get_ylabel()
    'share of the V in the steel [%]'
    """
    states = states_of(sweep)
    shares = [state.element_shares(element) for state in states]
    kinds = in_order({kind for here in shares for kind in here})
    columns = {
        kind: [here.get(kind, 0.0) if here else math.nan for here in shares]
        for kind in kinds
    }
    ax = own_or_given(ax)
    celsius = celsius_of(states)
    raised = temperature_axis(ax, celsius, fahrenheit)
    handles = draw_stack(ax, celsius, columns, kw)
    name = "carbon" if element == "C" else element
    ax.set_ylabel(f"share of the {name} in the steel [%]")
    heading(ax, title_of(states), notes_of(states), raised)
    room_on_top([(ax, 100.0)], handles, cautions_of(states), not_usable(states))
    ax.set_yticks(range(0, 101, 20))
    return ax


def carbon_shares(
    sweep: Sweep, *, ax: Axes | None = None, fahrenheit: bool = False, **kw: Any
) -> Axes:
    """How the carbon of the steel is shared between the matrix and each carbide.

    See `element_shares`, of which this is the case that matters most: what is not in
    the carbides hardens the matrix.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> steel = gs.Steel({"C": 0.9, "Cr": 4.1, "Mo": 5, "W": 6.2, "V": 1.9})
    >>> ax = gs.plot.carbon_shares(steel.sweep(celsius=range(1000, 1201, 50)))
    >>> ax.get_ylabel()
    'share of the carbon in the steel [%]'
    """
    return element_shares(sweep, "C", ax=ax, fahrenheit=fahrenheit, **kw)

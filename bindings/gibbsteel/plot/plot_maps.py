"""Carbide volume and matrix carbon as maps, side by side."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from .._core import SoakGrid
from ..quantities import carbide_volume_percent, matrix
from .axes import cannot_draw, own_or_given, pyplot
from .plot_map import check_grid, check_look, draw_map, map_heading

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def maps(
    grid: SoakGrid,
    *,
    axes: Sequence[Axes] | None = None,
    fahrenheit: bool = False,
    **kw: Any,
) -> list[Axes]:
    """Carbide volume and matrix carbon over the two swept variables, side by side.

    Parameters
    ----------
    grid : SoakGrid
    axes : sequence of two matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
    fahrenheit : bool
        As in `map`.
    **kw
        Passed on to `map`.

    Returns
    -------
    list of matplotlib.axes.Axes
        Two: carbide volume, matrix carbon.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "V": 1})
    >>> axes = gs.plot.maps(steel.grid(C=[0.5, 0.6], Co=[0, 2, 4], celsius=1120))
    >>> len(axes)
    2
    """
    quantities = [carbide_volume_percent(), matrix("C")]
    check_grid(grid)
    check_look(kw)
    if axes is None:
        axes = pyplot().subplots(1, 2, figsize=(12.4, 5.4), layout="constrained")[1]
    places = [own_or_given(ax) for ax in axes]
    if len(places) != 2:
        raise cannot_draw("axes", f"are {len(places)}", "give two")
    pairs = list(zip(places, quantities, strict=True))
    marks = [draw_map(ax, grid, quantity, fahrenheit, kw) for ax, quantity in pairs]
    for ax, quantity in pairs:  # when all is drawn, so that both are wrapped alike
        map_heading(ax, grid, quantity, fahrenheit, marks[0])
    return places

"""A number of the soaks as a map over two swept variables."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from .._core import Quantity, SoakGrid, State, SweptVariable
from ..quantities import carbide_volume_percent
from ..quantities import matrix as matrix_of
from .axes import cannot_draw, heading, own_or_given, pyplot
from .cautions import WORDS

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_COLORS = "cividis"  # even steps of lightness, for every kind of colour vision
_REMEDY = "give what steel.grid(C=[0.5, 0.6], celsius=range(1000, 1201, 50)) returns"


def map(
    grid: SoakGrid, quantity: Quantity, *, ax: Axes | None = None, **kw: Any
) -> Axes:
    """A quantity over the two swept variables: filled contours, and lines with numbers.

    Parameters
    ----------
    grid : SoakGrid
        Two or more values of each variable. The first is drawn to the right, the second
        upwards.
    quantity : Quantity
        For instance ``gs.quantities.matrix("C")``.
    ax : matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
    **kw
        Passed on to the filled contours, for instance ``levels=12``, ``cmap="Greys"``.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    InputError
        What is given is no grid, or has one row or column; what is no quantity.

    Notes
    -----
    Crosses mark soaks that are not usable, and the map is left open and hatched there,
    as where a soak was not done. Rings mark soaks with a caution, which is named above
    the map. Between the soaks the map is interpolated: take numbers from the grid.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "V": 1})
    >>> grid = steel.grid(C=[0.5, 0.55, 0.6], celsius=[1000, 1050, 1100])
    >>> ax = gs.plot.map(grid, gs.quantities.matrix("C"))
    >>> ax.get_xlabel(), ax.get_ylabel()
    ('C in the steel [wt%]', 'soak temperature [°C]')
    """
    _check(grid, quantity)
    ax = own_or_given(ax, (6.4, 5.2))
    columns, rows = np.argsort(grid.first.values), np.argsort(grid.second.values)
    x, y = grid.first.values[columns], grid.second.values[rows]
    z = grid.array(quantity).T[np.ix_(rows, columns)]
    ax.set_xlabel(_label(grid.first))
    ax.set_ylabel(_label(grid.second))
    ax.set_xlim(x[0], x[-1])
    ax.set_ylim(y[0], y[-1])
    _hatch_background(ax)
    _draw_contours(ax, x, y, np.ma.masked_invalid(z), quantity, kw)
    notes = _mark_cells(ax, grid)
    heading(ax, f"{grid.steel or 'steel'}: {quantity.name}", [*_notes(grid), *notes])
    return ax


def maps(grid: SoakGrid, *, axes: Sequence[Axes] | None = None, **kw: Any) -> list[Axes]:
    """Carbide volume and matrix carbon over the two swept variables, side by side.

    Parameters
    ----------
    grid : SoakGrid
    axes : sequence of two matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
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
    quantities = [carbide_volume_percent(), matrix_of("C")]
    _check(grid, quantities[0])
    if axes is None:
        axes = pyplot().subplots(1, 2, figsize=(11.0, 5.0), layout="constrained")[1]
    places = list(axes)
    if len(places) != 2:
        raise cannot_draw("axes", f"are {len(places)}", "give two")
    for quantity, ax in zip(quantities, places, strict=True):
        map(grid, quantity, ax=ax, **kw)
    return places


def _check(grid: object, quantity: object) -> None:
    if not isinstance(grid, SoakGrid):
        raise cannot_draw("grid", f"is {type(grid).__name__}, not SoakGrid", _REMEDY)
    if min(grid.shape) < 2:
        what = f"has {grid.shape[0]} x {grid.shape[1]} soaks"
        raise cannot_draw("grid", what, "sweep two or more values of each variable")
    if not isinstance(quantity, Quantity):
        what = f"is {type(quantity).__name__}, not Quantity"
        remedy = 'give for instance gs.quantities.matrix("C")'
        raise cannot_draw("quantity", what, remedy)


def _label(variable: SweptVariable) -> str:
    return "soak temperature [°C]" if variable.is_temperature else variable.label


def _notes(grid: SoakGrid) -> list[str]:
    """Composition with the swept elements named; soak, basis and edition of the file."""
    swept = [v.name for v in (grid.first, grid.second) if not v.is_temperature]
    given = grid.analysis.given
    fixed = [f"{x:g}{s}" for s, x in given.items() if s not in ("Fe", *swept)]
    steel = " ".join([*fixed, *swept]) + ", balance Fe [wt%]"
    at = "" if grid.celsius is None else f" at {grid.celsius:.0f} °C"
    return [steel, f"Long-hold limit{at}. {grid.parameters}"]


def _hatch_background(ax: Axes) -> None:
    """Shows wherever no contour is drawn."""
    from matplotlib.patches import Rectangle

    ax.add_patch(
        Rectangle(
            (0, 0), 1, 1, transform=ax.transAxes, facecolor="none", edgecolor="0.7",
            hatch="xx", linewidth=0.0, zorder=0.0, gid="hatch",
        )
    )


def _draw_contours(
    ax: Axes,
    x: npt.NDArray[np.float64],
    y: npt.NDArray[np.float64],
    z: Any,
    quantity: Quantity,
    kw: dict[str, Any],
) -> None:
    import matplotlib.patheffects as effects

    if z.count() == 0:
        return
    level = bool(np.isclose(z.max(), z.min(), rtol=1e-9, atol=1e-12))
    if level:  # one number everywhere: a fill without lines
        kw = {**kw, "levels": [z.min() - 0.5, z.max() + 0.5]}
    filled = ax.contourf(x, y, z, **{"levels": 10, "cmap": _COLORS, **kw})
    bar = ax.figure.colorbar(filled, ax=ax)
    bar.set_label(quantity.label)
    if level:
        bar.set_ticks([float(z.min())])
        return
    lines = ax.contour(x, y, z, levels=filled.levels, colors="black", linewidths=0.8)
    halo = [effects.withStroke(linewidth=2.5, foreground="white")]
    for text in ax.clabel(lines, fmt="%g", fontsize=8.0):
        text.set_path_effects(halo)


def _mark_cells(ax: Axes, grid: SoakGrid) -> list[str]:
    """Marks on the soaks that are not what they should be; words for the heading."""
    x, y = np.meshgrid(grid.first.values, grid.second.values, indexing="ij")
    states = grid.states
    codes = [_codes(state) for state in states]
    notes = []
    for name, flags, look in (
        ("not usable", [s is not None and not s.usable for s in states],
         {"marker": "x", "color": "black", "s": 40}),
        ("caution", [s is not None and s.usable and bool(c)
                     for s, c in zip(states, codes, strict=True)],
         {"marker": "o", "facecolors": "white", "edgecolors": "black", "s": 14,
          "linewidths": 0.8}),
    ):
        if any(flags):
            at = np.array(flags)
            ax.scatter(x.ravel()[at], y.ravel()[at], clip_on=False, zorder=3.0,
                       label=name, **look)
    return notes


def _codes(state: State | None) -> set[str]:
    if state is None:
        return set()
    return {warning.code for warning in state.warnings} & set(WORDS)

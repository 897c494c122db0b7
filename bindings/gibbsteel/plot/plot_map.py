"""A number of the soaks as a map over two swept variables."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from .._core import Quantity, SoakGrid, SweptVariable
from .axes import (
    axis_label,
    cannot_draw,
    check_quantity,
    degrees,
    fahrenheit_on_the_right,
    heading,
    no_such_option,
    own_or_given,
)
from .map_marks import family_notes, mark_soaks
from .sweeps import limit_words, volume_basis

if TYPE_CHECKING:
    from matplotlib.axes import Axes

MAP_COLORS = ["#fbf6e3", "#c9dcc4", "#86b6b3", "#4c86a3", "#3a5f8f"]
_LOOK = (  # of filled contours
    "levels",
    "cmap",
    "colors",
    "norm",
    "vmin",
    "vmax",
    "alpha",
    "extend",
    "hatches",
    "locator",
    "antialiased",
    "corner_mask",
    "algorithm",
    "nchunk",
    "zorder",
)
_REMEDY = "give what steel.grid(C=[0.5, 0.6], celsius=range(1000, 1201, 50)) returns"


def map(
    grid: SoakGrid,
    quantity: Quantity,
    *,
    ax: Axes | None = None,
    fahrenheit: bool = False,
    **kw: Any,
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
    fahrenheit : bool
        A second scale on the right where temperature is swept; otherwise the
        temperature of the soaks in both units.
    **kw
        Passed on to the filled contours, for instance ``levels=12``, ``cmap="Greys"``.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    InputError
        What is given is no grid, or has one row or column; what is no quantity; a
        keyword that filled contours do not know.

    Notes
    -----
    Crosses mark soaks that are not usable, and the map is left open and hatched there,
    as where a soak was not done. A dashed outline, half-way between soaks, holds those
    that carry a caution; its letter is explained above the map, as is what holds
    everywhere or nearly so. Between the soaks the map is interpolated: take numbers
    from the grid. Hardening estimates go over to other numbers where the family of the
    steel changes, which the words above the map say too.

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
    check_grid(grid)
    check_quantity(quantity)
    check_look(kw)
    ax = own_or_given(ax, (6.4, 5.2))
    marks = draw_map(ax, grid, quantity, fahrenheit, kw)
    map_heading(ax, grid, quantity, fahrenheit, marks)
    return ax


def check_grid(grid: object) -> None:
    """InputError for what is no grid, or has one row or column."""
    if not isinstance(grid, SoakGrid):
        raise cannot_draw("grid", f"is {type(grid).__name__}, not SoakGrid", _REMEDY)
    if min(grid.shape) < 2:
        what = f"has {grid.shape[0]} x {grid.shape[1]} soaks"
        raise cannot_draw("grid", what, "sweep two or more values of each variable")


def check_look(kw: Mapping[str, Any]) -> None:
    """InputError for a keyword that filled contours do not know: matplotlib would only
    say on the side that it was not used."""
    for name in kw:
        if name not in _LOOK:
            raise no_such_option("keyword", name, _LOOK)


def draw_map(
    ax: Axes,
    grid: SoakGrid,
    quantity: Quantity,
    fahrenheit: bool,
    kw: Mapping[str, Any],
) -> list[str]:
    """Everything but the heading; words that explain the marks."""
    columns, rows = np.argsort(grid.first.values), np.argsort(grid.second.values)
    x, y = grid.first.values[columns], grid.second.values[rows]
    z = grid.array(quantity).T[np.ix_(rows, columns)]
    ax.set_xlabel(_label(grid.first))
    ax.set_ylabel(_label(grid.second))
    ax.set_xlim(x[0], x[-1])
    ax.set_ylim(y[0], y[-1])
    _hatch_background(ax)
    gap = 0.05
    if fahrenheit and grid.second.is_temperature:
        fahrenheit_on_the_right(ax, "soak temperature")
        gap = 0.2 if ax.figure.get_layout_engine() is None else gap
    _draw_contours(ax, x, y, z, quantity, gap, kw)
    return mark_soaks(ax, grid) + family_notes(grid, quantity)


def map_heading(
    ax: Axes,
    grid: SoakGrid,
    quantity: Quantity,
    fahrenheit: bool,
    marks: Sequence[str],
) -> None:
    """Steel and quantity; composition, soak, basis and edition; words for the marks."""
    title = f"{grid.steel or 'steel'}: {quantity.name}"
    heading(ax, title, [*_notes(grid, quantity, fahrenheit), *marks])


def _label(variable: SweptVariable) -> str:
    return "soak temperature [°C]" if variable.is_temperature else variable.label


def _notes(grid: SoakGrid, quantity: Quantity, fahrenheit: bool) -> list[str]:
    """What is swept, the rest of the composition and the basis of volumes; soak and
    edition of the file."""
    swept = [v.name for v in (grid.first, grid.second) if not v.is_temperature]
    given = grid.analysis.given
    fixed = " ".join(f"{x:g}{s}" for s, x in given.items() if s not in ("Fe", *swept))
    done = [state for state in grid.states if state is not None]
    volumes = quantity.unit == "vol%"
    basis = volume_basis(done[0]) if volumes and done else ""
    at = "" if grid.celsius is None else f" at {degrees(grid.celsius, fahrenheit)}"
    return [
        f"{' and '.join(swept)} swept; {fixed}, balance Fe [wt%]{basis}",
        f"{limit_words(quantity, at)}{grid.parameters}",
    ]


def _hatch_background(ax: Axes) -> None:
    """Shows wherever no contour is drawn."""
    from matplotlib.patches import Rectangle

    ax.add_patch(
        Rectangle(
            (0, 0),
            1,
            1,
            transform=ax.transAxes,
            facecolor="none",
            edgecolor="0.7",
            hatch="xx",
            linewidth=0.0,
            zorder=0.0,
            gid="hatch",
        )
    )


def _colors() -> Any:
    """From light for little to dark for much; lightness falls steadily, so that grey
    print and colour-blind eyes keep the order, and black lines stay visible."""
    from matplotlib.colors import LinearSegmentedColormap

    return LinearSegmentedColormap.from_list("gibbsteel map", MAP_COLORS)


def _draw_contours(
    ax: Axes,
    x: npt.NDArray[np.float64],
    y: npt.NDArray[np.float64],
    z: npt.NDArray[np.float64],
    quantity: Quantity,
    gap: float,
    kw: Mapping[str, Any],
) -> None:
    """`gap`: between map and bar, as a share of the width; a layout adds what stands
    between them."""
    known = z[~np.isnan(z)]  # matplotlib leaves the others out
    if known.size == 0:
        return
    lowest, highest = float(known.min()), float(known.max())
    level = bool(np.isclose(highest, lowest, rtol=1e-9, atol=1e-12))
    if level:  # one number everywhere: a fill without lines
        kw = {**kw, "levels": [lowest - 0.5, highest + 0.5]}
    # No corner masks: a cell with a soak that failed is left open as a whole.
    look = {"levels": 10, "cmap": _colors(), "corner_mask": False, **kw}
    filled = ax.contourf(x, y, z, **look)
    bar = ax.figure.colorbar(filled, ax=ax, pad=gap)
    bar.set_label(axis_label(quantity))
    if level:
        bar.set_ticks([lowest])
        return
    # A line at the lowest number itself (no carbide at all) would only be ragged.
    between = [v for v in filled.levels if lowest < v < highest]
    if between:
        thin = {"colors": "black", "linewidths": 0.8, "corner_mask": False}
        _label_lines(ax, ax.contour(x, y, z, levels=between, **thin))


def _label_lines(ax: Axes, lines: Any) -> None:
    """Numbers on the lines, save where the frame would cut them."""
    import matplotlib.patheffects as effects

    halo = [effects.withStroke(linewidth=2.5, foreground="white")]
    to_share = ax.transData + ax.transAxes.inverted()
    for text in list(ax.clabel(lines, fmt="%g", fontsize=8.0)):
        text.set_path_effects(halo)
        place = to_share.transform(text.get_position())
        if min(*place, *(1.0 - place)) < 0.03:
            text.set_visible(False)

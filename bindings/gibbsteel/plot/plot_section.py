"""A section map: which phases are stable where."""

from __future__ import annotations

from typing import TYPE_CHECKING

from .._core import SectionAxis, SectionMap
from .axes import (
    cannot_draw,
    degrees,
    fahrenheit_on_the_right,
    heading,
    own_or_given,
)
from .section_labels import count_small, name_fields

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_REMEDY = "give what steel.section_map(C=(0, 2), celsius=(650, 1200)) returns"
_WORDS = {
    "gibbsteel.warning.301": "temperature outside the validity of the file",
    "gibbsteel.warning.302": "composition partly outside the validity of the file",
    "gibbsteel.warning.303": "no liquid in the file: melting not predicted",
    "gibbsteel.warning.304": "partly near or above the solidus of a similar steel",
    "gibbsteel.warning.306": "sigma, Laves or mu may form (not in the file)",
    "gibbsteel.warning.310": "known weak spot of the file",
    "gibbsteel.warning.312": "carbide former not modelled",
    "gibbsteel.warning.318": "much that is not modelled: not this steel's numbers",
    "gibbsteel.warning.358": "no published record of a steel like it",
    "gibbsteel.warning.355": "not complete: hatched parts are not known",
}


def section(
    section_map: SectionMap, *, ax: Axes | None = None, fahrenheit: bool = False
) -> Axes:
    """Boundaries as lines, with the phases written into the fields between them.

    Parameters
    ----------
    section_map : SectionMap
        What `Steel.section_map` returns.
    ax : matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
    fahrenheit : bool
        A second scale on the right, for maps over temperature; the temperature of the
        others in both units.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    InputError
        What is given is no section map.

    Notes
    -----
    A field too crowded for its name carries a number, which the heading explains; where
    not even that fits, the number stands nearby at the end of a thin line.
    Parts of which nothing is known are hatched. Heavier lines are reactions at one
    temperature.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> coarse = gs.SectionOptions(columns=3, rows=3, temperature_tolerance=1)
    >>> steel = gs.Steel({"C": 0.6})
    >>> found = steel.section_map(C=(0.4, 1.2), celsius=(700, 800), section=coarse)
    >>> gs.plot.section(found).get_ylabel()
    'temperature [°C]'
    """
    if not isinstance(section_map, SectionMap):
        what = f"is {type(section_map).__name__}, not SectionMap"
        raise cannot_draw("section_map", what, _REMEDY)
    ax = own_or_given(ax, (7.4, 5.4))
    _set_axes(ax, section_map, fahrenheit)
    _draw_gaps(ax, section_map)
    _draw_boundaries(ax, section_map)
    _write_names(ax, section_map, fahrenheit)
    return ax


def _write_names(ax: Axes, section_map: SectionMap, fahrenheit: bool) -> None:
    """Heading and names. A number more in the heading leaves the map less room, so that
    another name may not fit: until nothing changes."""
    title, notes = _title(section_map), _notes(section_map, fahrenheit)
    fields = count_small(ax, section_map.fields)
    numbers: dict[str, int] = {}
    while True:
        key = "; ".join(f"{number} {label}" for label, number in numbers.items())
        written = heading(ax, title, [*notes, key] if key else notes)
        if name_fields(ax, fields, section_map.boundaries, numbers):
            return
        written.remove()


def _label(axis: SectionAxis) -> str:
    return f"{axis.element} in the steel [wt%]" if axis.element else "temperature [°C]"


def _set_axes(ax: Axes, section_map: SectionMap, fahrenheit: bool) -> None:
    x, y = section_map.x, section_map.y
    ax.set_xlim(x.low, x.high)
    ax.set_ylim(y.low, y.high)
    ax.set_xlabel(_label(x))
    ax.set_ylabel(_label(y))
    if fahrenheit and not y.element:
        fahrenheit_on_the_right(ax, "temperature")


def _draw_gaps(ax: Axes, section_map: SectionMap) -> None:
    from matplotlib.patches import Polygon

    for gap in section_map.gaps:
        look = {
            "facecolor": "none",
            "edgecolor": "0.7",
            "hatch": "xx",
            "linewidth": 0.0,
        }
        ax.add_patch(Polygon(gap.outline, closed=True, gid="gap", **look))


def _draw_boundaries(ax: Axes, section_map: SectionMap) -> None:
    for boundary in section_map.boundaries:
        if boundary.of_gap:
            continue
        ax.plot(
            *boundary.points.T,
            color="black",
            linewidth=1.7 if boundary.invariant else 1.0,
            solid_capstyle="round",
            gid="boundary",
        )


def _title(section_map: SectionMap) -> str:
    axes = [axis.element for axis in (section_map.x, section_map.y) if axis.element]
    name = section_map.steel or "steel"
    return f"{name}: phases over {' and '.join(axes or ['temperature'])}"


def _notes(section_map: SectionMap, fahrenheit: bool) -> list[str]:
    """The rest of the composition; long-hold limit, edition of the file; cautions."""
    swept = {section_map.x.element, section_map.y.element, "Fe"}
    given = section_map.analysis.given
    fixed = " ".join(
        f"{x:g}{symbol}" for symbol, x in given.items() if symbol not in swept
    )
    rest = f"{fixed}, balance Fe [wt%]" if fixed else "balance Fe"
    celsius = section_map.celsius
    at = "" if celsius is None else f" at {degrees(celsius, fahrenheit)}"
    notes = [rest, f"Long-hold limit{at}. {section_map.parameters}"]
    codes = dict.fromkeys(warning.code for warning in section_map.warnings)
    cautions = [_WORDS[code] for code in codes if code in _WORDS]
    return notes + ([f"Caution: {'; '.join(cautions)}"] if cautions else [])

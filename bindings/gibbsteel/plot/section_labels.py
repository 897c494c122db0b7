"""Names of fields: inside where they fit, else nearby at the end of a thin line."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from .._core import SectionBoundary, SectionField
from .axes import SMALL, size_in_points

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_LETTERS = 8.0  # [pt]
_TRIES = 24  # places along each axis
_LEAST_SHARE = 5e-4  # of the map: smaller fields are not named
_SPACING = 1.1  # of lines

Points = npt.NDArray[np.float64]


def name_fields(
    ax: Axes, fields: Sequence[SectionField], boundaries: Sequence[SectionBoundary]
) -> None:
    """Writes the names; counts those that are left out."""
    size_in_points(ax)  # works out the layout, which decides what fits
    named = [field for field in fields if field.area_share >= _LEAST_SHARE]
    taken: list[Any] = []
    beside = [field for field in named if not _write_inside(ax, field, taken)]
    lines = [_path(_in_pixels(ax, boundary.points)) for boundary in boundaries]
    dots = [_dot(ax, field) for field in beside]
    for i, field in enumerate(beside):
        _write_beside(ax, field, lines, taken, dots[:i] + dots[i + 1 :])
    small = len(fields) - len(named)
    if small:
        words = "field is" if small == 1 else "fields are"
        text = f"{small} {words} too small to be named"
        ax.annotate(
            text,
            (1.0, 0.0),
            xycoords="axes fraction",
            xytext=(0.0, -26.0),
            textcoords="offset points",
            ha="right",
            va="top",
            fontsize=SMALL,
            color="0.35",
            gid="notes",
        )


def _wrapped(label: str) -> Iterator[str]:
    """The name in one line, two, three, ..."""
    parts = label.split(" + ")
    for per_line in range(len(parts), 0, -1):
        lines = [parts[i : i + per_line] for i in range(0, len(parts), per_line)]
        yield " +\n".join(" + ".join(line) for line in lines)


def _in_pixels(ax: Axes, points: Points) -> Points:
    return np.asarray(ax.transData.transform(points), dtype=float)


def _path_of(ax: Axes, field: SectionField) -> Any:
    """Outline and holes as one path [pixels]."""
    from matplotlib.path import Path

    loops = [_in_pixels(ax, loop) for loop in (field.outline, *field.holes)]
    closed = [np.vstack([loop, loop[:1]]) for loop in loops]
    codes = [
        [Path.MOVETO] + [Path.LINETO] * (len(loop) - 2) + [Path.CLOSEPOLY]
        for loop in closed
    ]
    return Path(np.vstack(closed), np.concatenate(codes))


def _places(ax: Axes, field: SectionField, outline: Points) -> Points:
    """Where the name may stand [pixels], the best first: the place with most room, then
    others inside the field, the nearest to it first."""
    best = _in_pixels(ax, np.array([field.label_point]))[0]
    low, high = outline.min(axis=0), outline.max(axis=0)
    grid = np.stack(
        np.meshgrid(*np.linspace(low, high, _TRIES + 2)[1:-1].T), axis=-1
    ).reshape(-1, 2)
    order = np.argsort(np.hypot(*(grid - best).T), kind="stable")
    return np.vstack([best, grid[order]])


def _path(points: Points) -> Any:
    from matplotlib.path import Path

    return Path(points)


def _half_size(ax: Axes, label: str) -> Points:
    """Half width and height of a name with some air around it [pixels]."""
    text = ax.text(0, 0, label, fontsize=_LETTERS, linespacing=_SPACING)
    box = text.get_window_extent()
    text.remove()
    air = 3.0 * ax.figure.dpi / 72.0
    half: Points = 0.5 * np.array([box.width, box.height]) + air
    return half


def _box(place: Points, half: Points) -> Any:
    from matplotlib.transforms import Bbox

    return Bbox([place - half, place + half])


def _write_inside(ax: Axes, field: SectionField, taken: list[Any]) -> bool:
    """False when the name fits nowhere in its field; a box for each name to `taken`."""
    path = _path_of(ax, field)
    places = _places(ax, field, _in_pixels(ax, field.outline))
    places = places[path.contains_points(places)]
    for label in _wrapped(field.label):
        half = _half_size(ax, label)
        for place in places:
            around = _box(place, half)
            if not path.intersects_bbox(around, filled=False):
                x, y = ax.transData.inverted().transform(place)
                look: dict[str, Any] = {"fontsize": _LETTERS, "gid": "field"}
                ax.text(x, y, label, ha="center", va="center", **look)
                taken.append(around)
                return True
    return False


def _free_places(ax: Axes, half: Points, best: Points) -> Points:
    """Places inside the axes [pixels], nearest to `best` first; none straight beside,
    above or below it, where a thin line could lie on a boundary."""
    low = np.array([ax.bbox.x0, ax.bbox.y0]) + half
    high = np.array([ax.bbox.x1, ax.bbox.y1]) - half
    axes = [np.linspace(a, b, 2 * _TRIES) for a, b in zip(low, high, strict=True)]
    grid = np.stack(np.meshgrid(*axes), axis=-1).reshape(-1, 2)
    aslant = grid[np.all(np.abs(grid - best) > half * (0.6, 1.5), axis=1)]
    order = np.argsort(np.hypot(*(aslant - best).T), kind="stable")
    return np.asarray(aslant[order], dtype=float)


def _dot(ax: Axes, field: SectionField) -> Any:
    """The surroundings of the end of a thin line."""
    best = _in_pixels(ax, np.array([field.label_point]))[0]
    return _box(best, np.array([4.0, 4.0]))


def _write_beside(
    ax: Axes,
    field: SectionField,
    lines: list[Any],
    taken: list[Any],
    dots: Sequence[Any],
) -> None:
    """The name in the nearest free place, and a thin line to the field; on the right of
    the axes where no place is free."""
    label = _short(field.label)
    half = _half_size(ax, label)
    best = _in_pixels(ax, np.array([field.label_point]))[0]
    for place in _free_places(ax, half, best):
        around, lead = _box(place, half), _path(np.vstack([best, place]))
        if any(around.overlaps(other) for other in (*taken, *dots)):
            continue
        if any(lead.intersects_bbox(other, filled=False) for other in (*taken, *dots)):
            continue
        if any(line.intersects_bbox(around, filled=False) for line in lines):
            continue
        taken.append(around)
        lines.append(lead)
        _lead(ax, field, label, ax.transAxes.inverted().transform(place), "center")
        return
    y = ax.transAxes.inverted().transform(best)[1]
    _lead(ax, field, label, (1.03, y), "left")


def _lead(ax: Axes, field: SectionField, label: str, to: Any, align: str) -> None:
    """A dot in the field, the name elsewhere (share of the axes), a line between."""
    ax.annotate(
        label,
        field.label_point,
        xytext=tuple(to),
        textcoords="axes fraction",
        fontsize=_LETTERS,
        linespacing=_SPACING,
        ha=align,
        va="center",
        gid="field",
        annotation_clip=False,
        arrowprops={
            "arrowstyle": "-",
            "linewidth": 0.6,
            "color": "0.35",
            "shrinkA": 0.0,
            "shrinkB": 0.0,
        },
    )
    ax.plot(*field.label_point, "o", markersize=2.0, color="0.35", gid="leader")


def _short(label: str) -> str:
    """Lines of at most three phases."""
    parts = label.split(" + ")
    lines = [" + ".join(parts[i : i + 3]) for i in range(0, len(parts), 3)]
    return " +\n".join(lines)

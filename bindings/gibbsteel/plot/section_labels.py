"""Names of fields: inside where they fit, else a number that the heading explains."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from .._core import SectionBoundary, SectionField
from .axes import SMALL, size_in_points

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_LETTERS = 8.0  # [pt]
_TRIES = 24  # places along each axis
_ANCHORS = 24  # places of a field where a thin line is tried
_NEAR = 0.05  # of the map: no shorter thin line is looked for
_LEAST_SHARE = 5e-4  # of the map: smaller fields are not named
_SPACING = 1.1  # of lines

Points = npt.NDArray[np.float64]


def count_small(ax: Axes, fields: Sequence[SectionField]) -> list[SectionField]:
    """Fields large enough to be named; says under the axes how many are not."""
    named = [field for field in fields if field.area_share >= _LEAST_SHARE]
    small = len(fields) - len(named)
    if small:
        words = "field is" if small == 1 else "fields are"
        ax.annotate(
            f"{small} {words} too small to be named",
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
    return named


def name_fields(
    ax: Axes,
    fields: Sequence[SectionField],
    boundaries: Sequence[SectionBoundary],
    numbers: dict[str, int],
) -> bool:
    """Writes the names, and numbers where they do not fit.

    Names that do not fit get a number in `numbers`. True: none was added, and all is
    written. False: nothing is written; the heading is to explain the new numbers, which
    leaves the map less room, and then it is tried again.
    """
    size_in_points(ax)  # works out the layout, which decides what fits
    taken: list[Any] = []
    known = len(numbers)
    written = [_write_inside(ax, f, _wrapped(f.label), taken) for f in fields]
    crowded = [f for f, text in zip(fields, written, strict=True) if text is None]
    for field in crowded:
        numbers.setdefault(field.label, len(numbers) + 1)
    if len(numbers) > known:
        for text in written:
            if text is not None:
                text.remove()
        return False
    lines = [_path(_in_pixels(ax, boundary.points)) for boundary in boundaries]
    beside = [
        field
        for field in crowded
        if _write_inside(ax, field, [str(numbers[field.label])], taken) is None
    ]
    dots = [_dot(ax, field) for field in beside]
    for i, field in enumerate(beside):
        others = dots[:i] + dots[i + 1 :]
        _write_beside(ax, field, str(numbers[field.label]), lines, taken, others)
    return True


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


def _write_inside(
    ax: Axes, field: SectionField, forms: Iterable[str], taken: list[Any]
) -> Any:
    """The text in the first form that fits in its field, whose box joins `taken`; None
    when none does."""
    path = _path_of(ax, field)
    places = _places(ax, field, _in_pixels(ax, field.outline))
    places = places[path.contains_points(places)]
    for label in forms:
        half = _half_size(ax, label)
        for place in places:
            around = _box(place, half)
            if path.intersects_bbox(around, filled=False):
                continue
            if any(around.overlaps(other) for other in taken):
                continue
            x, y = ax.transData.inverted().transform(place)
            look: dict[str, Any] = {"fontsize": _LETTERS, "gid": "field"}
            taken.append(around)
            return ax.text(x, y, label, ha="center", va="center", **look)
    return None


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


def _anchors(ax: Axes, field: SectionField) -> Points:
    """Where a thin line may end [pixels]: the place with most room, then others."""
    path = _path_of(ax, field)
    places = _places(ax, field, _in_pixels(ax, field.outline))
    inside = places[path.contains_points(places)]
    spread = inside[:: max(1, len(inside) // _ANCHORS)]
    return np.vstack([places[:1], spread])


def _write_beside(
    ax: Axes,
    field: SectionField,
    label: str,
    lines: list[Any],
    taken: list[Any],
    dots: Sequence[Any],
) -> None:
    """The number in the nearest free place, and a thin line to the field; on the field
    itself where no place is free."""
    half = _half_size(ax, label)
    anchors = _anchors(ax, field)
    near = _NEAR * min(ax.bbox.width, ax.bbox.height)
    best, place, shortest = anchors[0], anchors[0], np.inf
    for anchor in anchors:
        for free in _free_places(ax, half, anchor):
            length = float(np.hypot(*(free - anchor)))
            if length >= shortest:
                break
            around, lead = _box(free, half), _path(np.vstack([anchor, free]))
            if _is_free(around, lead, lines, (*taken, *dots)):
                best, place, shortest = anchor, free, length
                break
        if shortest < near:
            break
    if np.isfinite(shortest):
        taken.append(_box(place, half))
        lines.append(_path(np.vstack([best, place])))
    _lead(ax, label, best, place)


def _is_free(around: Any, lead: Any, lines: list[Any], taken: Sequence[Any]) -> bool:
    """Neither the number nor its thin line lies on what is there."""
    return not (
        any(around.overlaps(other) for other in taken)
        or any(lead.intersects_bbox(other, filled=False) for other in taken)
        or any(line.intersects_bbox(around, filled=False) for line in lines)
    )


def _lead(ax: Axes, label: str, at: Points, to: Points) -> None:
    """A dot in the field, its number elsewhere, a line between [pixels]."""
    point = tuple(ax.transData.inverted().transform(at))
    ax.annotate(
        label,
        point,
        xytext=tuple(ax.transAxes.inverted().transform(to)),
        textcoords="axes fraction",
        fontsize=_LETTERS,
        ha="center",
        va="center",
        gid="field",
        arrowprops={
            "arrowstyle": "-",
            "linewidth": 0.6,
            "color": "0.35",
            "shrinkA": 0.0,
            "shrinkB": 0.0,
        },
    )
    ax.plot(*point, "o", markersize=2.0, color="0.35", gid="leader")

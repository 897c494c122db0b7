"""Names of fields: inside where they fit, else on the right with a thin line."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from .._core import SectionField
from .axes import SMALL, size_in_points

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_LETTERS = 8.0  # [pt]
_TRIES = 24  # places along each axis
_LEAST_SHARE = 5e-4  # of the map: smaller fields are not named
_LINE = 1.3  # height of a line of letters

Points = npt.NDArray[np.float64]


def name_fields(ax: Axes, fields: Sequence[SectionField]) -> None:
    """Writes the names; counts those that are left out."""
    size_in_points(ax)  # works out the layout, which decides what fits
    beside = []
    for field in fields:
        if field.area_share < _LEAST_SHARE:
            continue
        if not _write_inside(ax, field):
            beside.append(field)
    _write_beside(ax, beside)
    small = sum(field.area_share < _LEAST_SHARE for field in fields)
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


def _write_inside(ax: Axes, field: SectionField) -> bool:
    """False when the name fits nowhere in its field."""
    from matplotlib.transforms import Bbox

    path = _path_of(ax, field)
    places = _places(ax, field, _in_pixels(ax, field.outline))
    places = places[path.contains_points(places)]
    dots = ax.figure.dpi / 72.0
    for label in _wrapped(field.label):
        text = ax.text(0, 0, label, fontsize=_LETTERS, ha="center", va="center")
        box = text.get_window_extent()
        text.remove()
        half = 0.5 * np.array([box.width, box.height]) + 3.0 * dots
        for place in places:
            around = Bbox([place - half, place + half])
            if not path.intersects_bbox(around, filled=False):
                _write(ax, label, place)
                return True
    return False


def _write(ax: Axes, label: str, place: Points) -> None:
    x, y = ax.transData.inverted().transform(place)
    look: dict[str, Any] = {"fontsize": _LETTERS, "ha": "center", "va": "center"}
    ax.text(x, y, label, linespacing=1.1, gid="field", **look)


def _spread(wanted: Sequence[float], heights: Sequence[float]) -> list[float]:
    """Middles near the wanted ones, ascending, that keep their heights apart."""
    middles = list(wanted)
    for _ in range(200):
        moved = False
        for i in range(1, len(middles)):
            need = 0.5 * (heights[i - 1] + heights[i])
            lack = need - (middles[i] - middles[i - 1])
            if lack > 1e-6:
                middles[i - 1] -= 0.5 * lack
                middles[i] += 0.5 * lack
                moved = True
        if not moved:
            break
    return middles


def _write_beside(ax: Axes, fields: Sequence[SectionField]) -> None:
    """Names on the right of the axes, in the order of their fields."""
    ordered = sorted(fields, key=lambda field: field.label_point[1])
    height = size_in_points(ax)[1]
    to_share = ax.transData + ax.transAxes.inverted()
    labels = [_short(field.label) for field in ordered]
    heights = [
        (_LINE * _LETTERS * (label.count("\n") + 1) + 3.0) / height for label in labels
    ]
    wanted = [float(to_share.transform(field.label_point)[1]) for field in ordered]
    for field, label, y in zip(ordered, labels, _spread(wanted, heights), strict=True):
        ax.annotate(
            label,
            field.label_point,
            xytext=(1.04, y),
            textcoords="axes fraction",
            fontsize=_LETTERS,
            ha="left",
            va="center",
            gid="field",
            annotation_clip=False,
            arrowprops={
                "arrowstyle": "-",
                "linewidth": 0.5,
                "color": "0.4",
                "shrinkA": 1.0,
                "shrinkB": 0.0,
                "relpos": (0.0, 0.5),
            },
        )
        ax.plot(*field.label_point, "o", markersize=1.8, color="0.4", gid="leader")


def _short(label: str) -> str:
    """Lines of at most three phases."""
    parts = label.split(" + ")
    lines = [" + ".join(parts[i : i + 3]) for i in range(0, len(parts), 3)]
    return " +\n".join(lines)

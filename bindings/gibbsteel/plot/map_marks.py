"""Marks on a map: soaks that are not usable, not done, or carry a caution."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from .._core import Quantity, SoakGrid, State
from .axes import SMALL
from .cautions import WORDS

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_CROSS: dict[str, Any] = {"marker": "x", "color": "black", "s": 36.0}
_DASHES = ((5.0, 2.0), (1.5, 1.5), (7.0, 2.0, 1.5, 2.0), (3.0, 1.0), (9.0, 3.0))
_NEARLY = 0.9  # of the usable soaks: said in words, without an outline

Flags = npt.NDArray[np.bool_]
Points = npt.NDArray[np.float64]
Side = tuple[Points, Points]


def mark_soaks(ax: Axes, grid: SoakGrid) -> list[str]:
    """Draws the marks and gives the words that explain them.

    A cross: not usable. A dashed outline with a letter: within it the soaks carry the
    caution of that letter; cautions of the same soaks share one.
    """
    states = grid.states
    failed = [state is not None and not state.usable for state in states]
    usable = sum(state is not None and state.usable for state in states)
    everywhere, outlined, notes = [], [], []
    for flags, words in _cautions(states):
        count = sum(flags)
        if count == usable:
            everywhere.append(words)
        elif count > _NEARLY * usable:
            notes.append(f"Nearly everywhere, {count} of {usable} soaks: {words}.")
        else:
            outlined.append((np.reshape(flags, grid.shape), words))
    notes += _outlines(ax, grid, outlined)
    if everywhere:
        notes.append(f"Everywhere: {'; '.join(everywhere)}.")
    _draw_crosses(ax, grid, failed)
    if any(failed):
        notes.append(f"Crosses: not usable, {sum(failed)} of {len(states)} soaks.")
    if grid.not_done:
        notes.append(f"Hatched: not done, {grid.not_done} of {len(states)} soaks.")
    return notes


def family_notes(grid: SoakGrid, quantity: Quantity) -> list[str]:
    """That a hardening estimate is of several families of steels in the grid, or that
    a border between them is near."""
    told = {w.code: w.text for w in grid.warnings_of(quantity)}
    codes = ("gibbsteel.warning.357", "gibbsteel.warning.335")
    return next(([told[code]] for code in codes if code in told), [])


def _cautions(states: list[State | None]) -> list[tuple[list[bool], str]]:
    """Soaks that carry a caution, and its words; of the same soaks together."""
    codes = [_codes(state) for state in states]
    found: dict[tuple[bool, ...], list[str]] = {}
    for code, words in WORDS.items():
        flags = tuple(code in here for here in codes)
        if any(flags):
            found.setdefault(flags, []).append(words)
    return [(list(flags), "; ".join(words)) for flags, words in found.items()]


def _codes(state: State | None) -> set[str]:
    if state is None or not state.usable:
        return set()
    return {warning.code for warning in state.warnings}


def _outlines(
    ax: Axes, grid: SoakGrid, regions: list[tuple[Flags, str]]
) -> list[str]:
    """Draws each region with a letter: what the letters mean."""
    rows, columns = np.argsort(grid.first.values), np.argsort(grid.second.values)
    x, y = grid.first.values[rows], grid.second.values[columns]
    sides = [_sides(_share(x), _share(y), f[np.ix_(rows, columns)]) for f, _ in regions]
    taken: list[Points] = []
    meanings = []
    for i, (_, words) in enumerate(regions):
        letter = chr(ord("A") + i)
        _draw_outline(ax, [ends for ends, _ in sides[i]], i, letter)
        others = [side for k, one in enumerate(sides) if k != i for side in one]
        middles = [ends.mean(axis=0) for ends, _ in others]
        place, inwards = _place(sides[i], [*taken, *middles])
        taken.append(place)
        _draw_letter(ax, place, inwards, letter)
        meanings.append(f"{letter} {words}")
    return [f"Within the dashed outlines: {'; '.join(meanings)}."] if regions else []


def _edges(values: Points) -> Points:
    """Of the cells around soaks: half-way between two of them, and the ends."""
    middle = 0.5 * (values[1:] + values[:-1])
    return np.concatenate([values[:1], middle, values[-1:]])


def _share(values: Points) -> Points:
    """Of the width or height of the map."""
    shares: Points = (values - values[0]) / (values[-1] - values[0])
    return shares


def _sides(x: Points, y: Points, inside: Flags) -> list[Side]:
    """Between cells inside and outside, none along the frame: both ends, and the
    direction inwards."""
    at_x, at_y = _edges(x), _edges(y)
    found: list[Side] = []
    for i, j in np.argwhere(inside[1:] != inside[:-1]):
        ends = [(at_x[i + 1], at_y[j]), (at_x[i + 1], at_y[j + 1])]
        inwards = (1.0 if inside[i + 1, j] else -1.0, 0.0)
        found.append((np.array(ends), np.array(inwards)))
    for i, j in np.argwhere(inside[:, 1:] != inside[:, :-1]):
        ends = [(at_x[i], at_y[j + 1]), (at_x[i + 1], at_y[j + 1])]
        inwards = (0.0, 1.0 if inside[i, j + 1] else -1.0)
        found.append((np.array(ends), np.array(inwards)))
    return found


def _place(sides: list[Side], taken: list[Points]) -> Side:
    """The middle of the side that is farthest from the frame, other letters and other
    outlines, and the direction inwards."""
    middles = np.array([ends.mean(axis=0) for ends, _ in sides])
    room = np.minimum(middles, 1.0 - middles).min(axis=1)
    for point in taken:
        room = np.minimum(room, np.hypot(*(middles - point).T))
    best = int(np.argmax(room))
    return middles[best], sides[best][1]


def _draw_outline(ax: Axes, lines: list[Points], number: int, letter: str) -> None:
    from matplotlib.collections import LineCollection

    dashed = (0.0, _DASHES[number % len(_DASHES)])
    for color, width, style in (("white", 2.6, "solid"), ("black", 1.3, dashed)):
        drawn = LineCollection(
            lines,
            colors=color,
            linewidths=width,
            linestyles=[style],
            transform=ax.transAxes,
            zorder=2.5,
        )
        drawn.set_gid(f"caution {letter}" if color == "black" else "halo")
        ax.add_collection(drawn, autolim=False)


def _draw_letter(ax: Axes, place: Points, inwards: Points, letter: str) -> None:
    """Just inside the outline."""
    ax.annotate(
        letter,
        tuple(place),
        xycoords="axes fraction",
        xytext=tuple(7.5 * inwards),
        textcoords="offset points",
        ha="center",
        va="center",
        fontsize=SMALL,
        fontweight="bold",
        gid="caution",
        zorder=3.0,
        bbox={"facecolor": "white", "edgecolor": "black", "pad": 1.5, "linewidth": 0.6},
    )


def _draw_crosses(ax: Axes, grid: SoakGrid, failed: list[bool]) -> None:
    if not any(failed):
        return
    x, y = np.meshgrid(grid.first.values, grid.second.values, indexing="ij")
    at = np.array(failed)
    # On top of the frame, so that a soak at the edge of the map is marked whole.
    look = {"clip_on": False, "zorder": 3.0, "label": "not usable"}
    ax.scatter(x.ravel()[at], y.ravel()[at], **look, **_CROSS)

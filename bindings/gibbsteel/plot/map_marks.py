"""Marks on a map: soaks that are not usable, not done, or carry a caution."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from .._core import SoakGrid, State
from .cautions import WORDS

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_CROSS: dict[str, Any] = {"marker": "x", "color": "black", "s": 36.0}
_RING: dict[str, Any] = {
    "marker": "o",
    "facecolors": "white",
    "edgecolors": "black",
    "linewidths": 0.8,
    "s": 14.0,
}


def mark_soaks(ax: Axes, grid: SoakGrid) -> list[str]:
    """Draws the marks and gives the words that explain them.

    A cross: not usable. A ring: usable, with a caution that not all soaks carry.
    """
    states = grid.states
    failed = [state is not None and not state.usable for state in states]
    codes = [_codes(state) for state in states]
    usable = [here for state, here in zip(states, codes) if state and state.usable]
    everywhere = set.intersection(*usable) if usable else set()
    partly = set().union(*usable) - everywhere
    rings = [bool(here & partly) for here in codes]
    _draw(ax, grid, failed, _CROSS, "not usable")
    _draw(ax, grid, rings, _RING, "caution")
    notes = []
    if partly:
        notes.append(f"Rings: {_words(partly)}.")
    if everywhere:
        notes.append(f"Everywhere: {_words(everywhere)}.")
    if any(failed):
        notes.append(f"Crosses: not usable, {sum(failed)} of {len(states)} soaks.")
    if grid.not_done:
        notes.append(f"Hatched: not done, {grid.not_done} of {len(states)} soaks.")
    return notes


def _codes(state: State | None) -> set[str]:
    if state is None or not state.usable:
        return set()
    return {warning.code for warning in state.warnings} & set(WORDS)


def _words(codes: set[str]) -> str:
    return "; ".join(words for code, words in WORDS.items() if code in codes)


def _draw(
    ax: Axes, grid: SoakGrid, flags: Sequence[bool], look: dict[str, Any], name: str
) -> None:
    if not any(flags):
        return
    x, y = np.meshgrid(grid.first.values, grid.second.values, indexing="ij")
    at = np.array(flags)
    # On top of the frame, so that a soak at the edge of the map is marked whole.
    ax.scatter(
        x.ravel()[at], y.ravel()[at], clip_on=False, zorder=3.0, label=name, **look
    )

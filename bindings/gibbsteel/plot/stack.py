"""Areas on top of one another, one per kind of phase."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from .phase_styles import style_of_phase

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def draw_stack(
    ax: Axes,
    celsius: Sequence[float],
    columns: Mapping[str, Sequence[float]],
    kw: Mapping[str, Any],
) -> list[Any]:
    """Areas of kind -> values, from the bottom; NaN leaves a gap. Legend handles, in
    the order in which the areas lie on the page (the topmost first)."""
    from matplotlib.patches import Patch

    handles = []
    below = np.zeros(len(celsius))
    for name, values in columns.items():
        above = below + np.asarray(values, dtype=float)
        look = {**style_of_phase(name).of_area(), **kw}
        ax.fill_between(celsius, below, above, label=name, **look)
        handles.append(Patch(label=name, **{**look, "linewidth": 0.6}))
        ax.plot(celsius, above, color="#202020", linewidth=0.6, gid="edge")
        below = above
    return handles[::-1]

"""What a style is: a fill, a line and a pattern that also tell apart in grey."""

from __future__ import annotations

import math
import zlib
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True)
class Style:
    """How one phase or element is drawn.

    Attributes
    ----------
    face : str
        Colour of an area, ``"#rrggbb"``.
    line : str
        Colour of a line: the hue of the area, dark enough for white paper.
    hatch : str
        Pattern of an area; may be empty.
    dash : tuple of float
        Lengths of dashes and gaps in line widths; empty: a full line.
    marker : str
        Marker of a line.
    """

    face: str
    line: str
    hatch: str
    dash: tuple[float, ...]
    marker: str

    @property
    def hatch_color(self) -> str:
        """Light on a dark area, dark on a light one."""
        return "#ffffff" if luminance(self.face) < 50.0 else "#404040"

    def of_area(self) -> dict[str, Any]:
        """Keywords for an area."""
        return {
            "facecolor": self.face,
            "edgecolor": self.hatch_color,
            "hatch": self.hatch or None,
            "linewidth": 0.0,
        }

    def of_line(self) -> dict[str, Any]:
        """Keywords for a line."""
        return {
            "color": self.line,
            "linestyle": (0, self.dash) if self.dash else "-",
            "marker": self.marker,
            "markersize": 4.5,
            "linewidth": 1.6,
        }


def luminance(color: str) -> float:
    """CIE lightness L* of ``"#rrggbb"``, 0 (black) to 100 (white).

    What is left of a colour in grey print. sRGB and CIE 1976, quoted from memory.
    """
    channels = [int(color[i : i + 2], 16) / 255.0 for i in (1, 3, 5)]
    linear = [
        c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels
    ]
    y: float = 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
    if y > 216.0 / 24389.0:
        return 116.0 * math.cbrt(y) - 16.0
    return y * 24389.0 / 27.0


def chosen(known: Mapping[str, Style], spare: tuple[Style, ...], name: str) -> Style:
    """The style of a name; one of the spare ones, always the same, for an unknown name.

    Two unknown names may meet in one spare style; the legend still names both.
    """
    if name in known:
        return known[name]
    return spare[zlib.crc32(name.encode()) % len(spare)]

"""One look per kind of phase, the same in every figure.

Areas differ by lightness (steps of at least 5 in L*, so that they stay apart in grey
print and for every kind of colour vision) and by hatch; lines differ by dash and
marker. The order is that in which areas are stacked, from the bottom.
"""

from __future__ import annotations

from collections.abc import Iterable

from .styles import Style, chosen

# Dashes: lengths of line and gap, in line widths.
_FULL: tuple[float, ...] = ()
_LONG = (6.0, 2.0)
_SHORT = (3.0, 1.5)
_DOT = (1.0, 1.2)
_DASH_DOT = (6.0, 1.5, 1.0, 1.5)
_DASH_DOT_DOT = (6.0, 1.5, 1.0, 1.5, 1.0, 1.5)
_SHORT_DOT = (3.0, 1.2, 1.0, 1.2)
_VERY_LONG = (10.0, 2.5)

PHASE_STYLES = {
    "matrix": Style("#f1f3f5", "#3f444a", "", _FULL, ""),
    "austenite": Style("#f1f3f5", "#3f444a", "", _FULL, ""),
    "ferrite": Style("#cfd2d6", "#6a6f75", "o", _LONG, ""),
    "hexagonal matrix": Style("#7a7e84", "#7a7e84", "++", _DOT, ""),
    "MC": Style("#173a6e", "#173a6e", "", _FULL, "o"),
    "M6C": Style("#e8a93a", "#a8690c", "//", _LONG, "s"),
    "M23C6": Style("#379a86", "#21705f", "..", _SHORT, "^"),
    "M7C3": Style("#f3e58c", "#8a7413", "\\\\", _DASH_DOT, "D"),
    "M3C": Style("#b5402c", "#b5402c", "xx", _DOT, "v"),
    "M2C": Style("#6b3a86", "#6b3a86", "--", _SHORT_DOT, "P"),
    "M3C2": Style("#e6b6d0", "#b0628c", "||", _DASH_DOT_DOT, "X"),
    "hexagonal MC": Style("#63a5d9", "#2c74ad", "\\", _VERY_LONG, "*"),
    "graphite": Style("#161616", "#161616", "", _DOT, "h"),
    "liquid": Style("#006571", "#006571", "-", _LONG, "H"),
}

# For kinds that another parameter file brings: hatches that no known kind has.
_SPARE = (
    Style("#d9e8c4", "#5d7a35", "oo", (4.0, 1.0), "<"),
    Style("#c8b8a0", "#7d6a48", "xxx", (8.0, 1.5, 3.0, 1.5), ">"),
    Style("#9fc2c0", "#3f7d7a", "///", (2.0, 2.0), "p"),
    Style("#e0c9f2", "#8355ad", "...", (5.0, 1.0, 2.0, 1.0), "d"),
    Style("#b9a7a0", "#75594e", "\\\\\\", (1.0, 2.5), "8"),
)


def style_of_phase(kind: str) -> Style:
    """The style of a kind of phase; for one that is not listed, a spare style.

    The spare style depends on the name alone, so it is the same in every figure.

    Examples
    --------
    >>> style_of_phase("M6C").hatch
    '//'
    """
    return chosen(PHASE_STYLES, _SPARE, kind)


def in_order(kinds: Iterable[str]) -> list[str]:
    """Kinds of phase in the order of stacking, unknown ones last by name.

    Examples
    --------
    >>> in_order(["M6C", "Z phase", "MC"])
    ['MC', 'M6C', 'Z phase']
    """
    listed = list(PHASE_STYLES)
    place = {kind: i for i, kind in enumerate(listed)}
    return sorted(kinds, key=lambda kind: (place.get(kind, len(listed)), kind))

"""One look per steel of a figure, by its place in the list: colour, dash and marker."""

from __future__ import annotations

from .styles import Style

_COLORS = (
    "#0b3c7d",
    "#b8420f",
    "#1f6f3a",
    "#6d2a7c",
    "#8a6a00",
    "#0b6e78",
    "#a3174f",
    "#303030",
)
_DASHES: tuple[tuple[float, ...], ...] = (
    (),
    (6.0, 2.0),
    (1.0, 1.2),
    (6.0, 1.5, 1.0, 1.5),
    (3.0, 1.5),
    (10.0, 2.5),
    (3.0, 1.2, 1.0, 1.2),
)
_MARKERS = ("o", "s", "^", "D", "v", "P", "X", "<", ">")


def style_of_steel(place: int) -> Style:
    """The style of the steel in this place of a list, from 0; none of the first 504
    comes twice.

    Examples
    --------
    >>> style_of_steel(1).marker
    's'
    """
    color = _COLORS[place % len(_COLORS)]
    dash = _DASHES[place % len(_DASHES)]
    return Style(color, color, "", dash, _MARKERS[place % len(_MARKERS)])

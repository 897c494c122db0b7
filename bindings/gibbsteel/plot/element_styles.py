"""One look per element, the same in every figure: colour, dash and marker."""

from __future__ import annotations

from .styles import Style, chosen


def _line(color: str, dash: tuple[float, ...], marker: str) -> Style:
    return Style(color, color, "", dash, marker)


ELEMENT_STYLES = {
    "C": _line("#101010", (), "o"),
    "Cr": _line("#1f5fa8", (), "s"),
    "Mo": _line("#b8530a", (6.0, 2.0), "^"),
    "W": _line("#2b7a4b", (6.0, 1.5, 1.0, 1.5), "D"),
    "V": _line("#7b3294", (3.0, 1.5), "v"),
    "Co": _line("#a3174f", (1.0, 1.2), "P"),
    "Ni": _line("#5c7f8c", (10.0, 2.5), "X"),
    "Mn": _line("#8a7413", (3.0, 1.2, 1.0, 1.2), "<"),
    "Si": _line("#6e6e6e", (6.0, 1.5, 1.0, 1.5, 1.0, 1.5), ">"),
    "Fe": _line("#3f444a", (8.0, 1.5, 3.0, 1.5), "h"),
}

_SPARE = (
    _line("#4b6a1f", (4.0, 1.0), "p"),
    _line("#96405f", (2.0, 2.0), "d"),
    _line("#276f86", (5.0, 1.0, 2.0, 1.0), "*"),
)


def style_of_element(symbol: str) -> Style:
    """The style of an element; for one that is not listed, a spare style.

    Examples
    --------
    >>> style_of_element("Cr").marker
    's'
    """
    return chosen(ELEMENT_STYLES, _SPARE, symbol)

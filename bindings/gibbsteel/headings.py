"""Headings of columns that hold an element: its symbol, with or without a unit."""

from __future__ import annotations

import re
from dataclasses import dataclass

from ._core import Problem, element_problem

_PER_WEIGHT_PERCENT = {
    "": 1.0,
    "%": 1.0,
    "wt%": 1.0,
    "w%": 1.0,
    "weight%": 1.0,
    "mass%": 1.0,
    "m%": 1.0,
    "ppm": 1e4,
    "wtppm": 1e4,
    "massppm": 1e4,
}
_SYMBOL_FIRST = re.compile(r"([A-Za-z]{1,2})(?:\s*[\[(](.*)[\])]|[\s_,]+(.*)|(%.*))?")
_UNIT_FIRST = re.compile(r"(%|wt\.?\s*%|ppm)\s*([A-Za-z]{1,2})")
_NUMBER_SIGN = "No"  # of a row: a symbol as well, of nobelium


@dataclass(frozen=True)
class Heading:
    """A column of an element."""

    symbol: str
    unit: str = ""  # as written

    @property
    def per_weight_percent(self) -> float | None:
        """Units in one weight percent; None of a unit that is not of mass."""
        return _PER_WEIGHT_PERCENT.get(re.sub(r"[\s.\-_]", "", self.unit).lower())


def heading_of(text: str) -> Heading:
    """Symbol and unit; a text without a unit as it is.

    Examples
    --------
    >>> heading_of("Cr [wt%]"), heading_of("N ppm").per_weight_percent
    (Heading(symbol='Cr', unit='wt%'), 10000.0)
    >>> heading_of("furnace"), heading_of("C at%").per_weight_percent
    (Heading(symbol='furnace', unit=''), None)
    """
    turned = _UNIT_FIRST.fullmatch(text)
    found = _SYMBOL_FIRST.fullmatch(text)
    if turned:
        unit, symbol = turned.groups()
    elif found:
        symbol, *units = found.groups()
        unit = next((one.strip() for one in units if one is not None), "")
    else:
        return Heading(text)
    is_amount = "%" in unit or "pp" in unit.lower()
    return Heading(symbol, unit) if is_amount else Heading(text)


def heading_problem(place: str, text: str) -> Problem | None:
    """Why a column is not that of an element; None when it is.

    Its remedy is what may have been meant, or nothing.
    """
    problem = element_problem(place, heading_of(text).symbol, [], "")
    is_element = problem.code != "gibbsteel.input.201"
    if is_element and text != _NUMBER_SIGN:
        return None
    what = f"column {text!r} is not the symbol of an element"
    meant = not is_element and problem.remedy.startswith("did you mean")
    return Problem("gibbsteel.input.201", place, what, problem.remedy if meant else "")

"""Cells of tables: empty ones, and numbers that are text."""

from __future__ import annotations

import re
from typing import Any

from .arguments import as_float
from .texts import shown
from .units import is_quantity

_EMPTY = {"", "-", "--", "\u2013", "\u2014", "n/a", "nan", "none", "<na>", "nat"}
_NUMBER = re.compile(r"[+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)(?:[eE][+-]?[0-9]+)?")
_GROUPED = re.compile(r"[+-]?[1-9][0-9]{0,2}[.,][0-9]{3}")
_CODE = "gibbsteel.input.202"
_REMEDY = "give weight percent as a number, for instance 0.55"


class NoNumberError(ValueError):
    """Of a cell: what is wrong with it, and the remedy."""

    def __init__(self, what: str, remedy: str, code: str = _CODE) -> None:
        super().__init__(what)
        self.what = what
        self.remedy = remedy
        self.code = code


def is_empty(value: Any) -> bool:
    """True for None, NaN, a masked number, and texts such as "" and "-"."""
    return not isinstance(value, int) and str(value).strip().lower() in _EMPTY


def number_in(text: str) -> float:
    """The number that a text is, with decimal point or decimal comma.

    Raises
    ------
    NoNumberError

    Examples
    --------
    >>> number_in(" 0,56 ")
    0.56
    """
    bare = text.strip()
    if _NUMBER.fullmatch(bare):
        return float(bare.replace(",", "."))
    what = f"is {text!r}"
    if bare[:1] in ("<", "\u2264"):
        what += ", less than could be measured"
        remedy = "leave it out where that is as good as none, or give a number"
        raise NoNumberError(what, remedy)
    if _NUMBER.fullmatch(bare.replace(",", "")):
        what += ", with more than a decimal sign"
        raise NoNumberError(what, "write 1234.5 or 1234,5")
    raise NoNumberError(f"{what}, no number", _REMEDY)


def number_of_cell(value: Any, may_be_thousands: bool) -> float:
    """The number of a cell that is not empty.

    Parameters
    ----------
    may_be_thousands : bool
        True: 1,200 may be 1200 as well as 1.2, and is refused.

    Raises
    ------
    NoNumberError
    """
    if isinstance(value, str):
        if may_be_thousands and _GROUPED.fullmatch(value.strip()):
            what = f"is {value!r}, which may be a thousand times as much"
            raise NoNumberError(what, "write 1200 or 1.2")
        return number_in(value)
    if is_quantity(value):
        what = f"is {value}, with a unit of its own"
        raise NoNumberError(what, "give the number in the unit of the heading")
    try:
        return as_float(value)
    except TypeError:
        raise NoNumberError(f"is {shown(value)}, no number", _REMEDY) from None

"""Arguments that are another kind of thing than is asked for: one error for all."""

from __future__ import annotations

from typing import Any, TypeVar

from ._core import Problem
from .errors import InputError

_T = TypeVar("_T")


def require(value: Any, wanted: type[_T], place: str, remedy: str) -> _T:
    """The value, when it is of the wanted type.

    Raises
    ------
    InputError
        gibbsteel.input.220

    Examples
    --------
    >>> require("M6C", str, "kind", "give one kind of carbide")
    'M6C'
    """
    if isinstance(value, wanted):
        return value
    what = f"is {type(value).__name__}, not {wanted.__name__}"
    raise InputError([Problem("gibbsteel.input.220", place, what, remedy)])

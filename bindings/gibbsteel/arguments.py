"""Arguments that are another kind of thing than is asked for: one error for all."""

from __future__ import annotations

import operator
from collections.abc import Iterable
from typing import Any, TypeVar

from ._core import Problem
from .errors import InputError

_T = TypeVar("_T")

MOST_INT = 2**31 - 1
MOST_THREADS = 4096
MOST_SAMPLES = 1_000_000
MOST_SEED = 2**64 - 1


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


def items_of(value: Any, place: str, remedy: str) -> list[tuple[Any, Any]]:
    """Names and values of a mapping: of a dict, or anything else with ``items()``.

    Raises
    ------
    InputError
        gibbsteel.input.220

    Examples
    --------
    >>> items_of({"C": (0.3, 0.9)}, "vary", "give a range by element")
    [('C', (0.3, 0.9))]
    """
    if hasattr(value, "items"):
        return list(value.items())
    what = f"is {type(value).__name__}, not a mapping"
    raise InputError([Problem("gibbsteel.input.220", place, what, remedy)])


def listed(values: Any, wanted: type[_T], place: str, remedy: str) -> list[_T]:
    """The values, when all are of the wanted type; a single one as a list of one.

    Raises
    ------
    InputError
        gibbsteel.input.220

    Examples
    --------
    >>> listed("M6C", str, "kinds", "give kinds of carbide")
    ['M6C']
    """
    if isinstance(values, wanted) or not isinstance(values, Iterable):
        values = [values]
    return [require(value, wanted, place, remedy) for value in values]


def as_float(value: Any) -> float:
    """The number, of Python or numpy.

    Raises
    ------
    TypeError
        Of anything else: a text, a truth value, more than a float can hold.

    Examples
    --------
    >>> as_float(2)
    2.0
    """
    of_numpy = getattr(getattr(value, "dtype", None), "kind", "f")
    others = (str, bytes, bytearray, memoryview, bool, complex)
    if isinstance(value, others) or of_numpy in "bcSU":
        raise TypeError
    try:
        return float(value)
    except (ValueError, OverflowError):
        raise TypeError from None


def real(value: Any, place: str) -> float:
    """The number, of Python or numpy; no text, which may be a number by mistake.

    Raises
    ------
    InputError
        gibbsteel.input.220

    Examples
    --------
    >>> real(2, "minutes")
    2.0
    """
    try:
        return as_float(value)
    except TypeError:
        what, remedy = f"is {type(value).__name__}, not float", "give a number"
        problem = Problem("gibbsteel.input.220", place, what, remedy)
        raise InputError([problem]) from None


def whole(value: Any, place: str) -> int:
    """The whole number, of Python or numpy.

    Raises
    ------
    InputError
        gibbsteel.input.220

    Examples
    --------
    >>> whole(4, "threads")
    4
    """
    try:
        return operator.index(value)
    except TypeError:
        what, remedy = f"is {type(value).__name__}, not int", "give a whole number"
        problem = Problem("gibbsteel.input.220", place, what, remedy)
        raise InputError([problem]) from None


def count(
    value: Any, place: str, least: int, most: int, code: str | None = None
) -> int:
    """The whole number, when it is within its limits.

    With a code, the compiled part checks the limits, together with all else; what it
    cannot even take is refused here.

    Raises
    ------
    InputError
        gibbsteel.input.220, or the code when it is outside.

    Examples
    --------
    >>> count(4, "threads", 0, MOST_THREADS)
    4
    """
    number = whole(value, place)
    low, high = (least, most) if code is None else (0, max(most, MOST_INT))
    if not low <= number <= high:
        remedy = f"give a whole number from {least} to {most}"
        problem = Problem(
            code or "gibbsteel.input.220", place, f"is {number}", remedy
        )
        raise InputError([problem])
    return number


def threads_of(threads: Any) -> int:
    """0: as many as the machine has cores.

    Raises
    ------
    InputError
        gibbsteel.input.220

    Examples
    --------
    >>> threads_of(2)
    2
    """
    return count(threads, "threads", 0, MOST_THREADS)

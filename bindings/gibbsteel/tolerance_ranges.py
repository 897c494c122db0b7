"""Ranges of weight percents around a steel."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any, TypeAlias

from ._core import Problem
from .arguments import as_float, items_of
from .errors import InputError
from .texts import shown, writable

_CODE = "gibbsteel.input.270"

Range: TypeAlias = tuple[float, float] | float


class _TooWideError(Exception):
    """Plus or minus more than there is: meant, perhaps, as an upper limit."""


def _ends(value: Any, nominal: float) -> tuple[float, float]:
    """Lowest and highest, of a pair or of plus or minus one number."""
    if isinstance(value, (str, bytes, bytearray)):
        raise TypeError
    if isinstance(value, Iterable):
        low, high = value
        return as_float(low), as_float(high)
    width = as_float(value)
    if not width >= 0.0:
        raise ValueError
    if 0.0 < nominal < width:
        raise _TooWideError
    return max(0.0, nominal - width), nominal + width


def limits_of(
    ranges: Mapping[str, Range] | None, given: Mapping[str, float]
) -> list[tuple[str, float, float]]:
    """(symbol, lowest, highest) of every range; all that are none are named."""
    problems: list[Problem] = []
    limits: list[tuple[str, float, float]] = []
    by_element = 'give them by element: ranges={"C": (0.50, 0.60)}'
    pairs = [] if ranges is None else items_of(ranges, "ranges", by_element)
    for named, value in pairs:
        symbol = writable(str(named))
        nominal = given.get(symbol, 0.0)
        what, remedy = f"is {shown(value)}", "give (lowest, highest)"
        try:
            limits.append((symbol, *_ends(value, nominal)))
            continue
        except (TypeError, ValueError):
            remedy += ", or plus or minus one number: 0.02"
        except _TooWideError:
            what += f", plus or minus, of a steel with {nominal:g}"
        problems.append(Problem(_CODE, f"ranges, {symbol}", what, remedy))
    if problems:
        raise InputError(problems)
    return limits

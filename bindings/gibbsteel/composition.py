"""Compositions in weight percent from dicts, keywords or pandas Series."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ._core import Problem
from .errors import InputError


def _problem(symbol: object, what: str) -> Problem:
    return Problem(
        "gibbsteel.input.202",
        f"composition[{symbol!r}]",
        what,
        "give weight percent as a number, for instance 0.55",
    )


def _number(symbol: object, value: Any, problems: list[Problem]) -> float:
    try:
        if isinstance(value, (str, bytes)):
            raise TypeError
        return float(value)
    except (TypeError, ValueError):
        problems.append(_problem(symbol, f"is {value!r}"))
        return 0.0


def as_weight_percent(
    composition: Mapping[str, float] | None, keywords: Mapping[str, float]
) -> dict[str, float]:
    """One dict from a mapping (anything with ``items()``) and keywords."""
    problems: list[Problem] = []
    result: dict[str, float] = {}
    for items in (composition, keywords):
        if items is None:
            continue
        if not hasattr(items, "items"):
            what = f"is {type(items).__name__}, not a mapping"
            raise InputError([_problem("", what)])
        for symbol, value in items.items():
            if symbol in result:
                problems.append(_problem(symbol, "is given twice"))
            result[str(symbol)] = _number(symbol, value, problems)
    if problems:
        raise InputError(problems)
    return result

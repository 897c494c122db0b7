"""Compositions in weight percent from dicts, keywords, pandas Series or quantities."""

from __future__ import annotations

from collections.abc import Mapping
from difflib import get_close_matches
from typing import Any

from ._core import Problem, element_problem
from .errors import InputError
from .units import is_quantity, magnitude

_FRACTION = "give a mass per mass, or weight percent as a number"
_REMEDY = "give weight percent as a number, for instance 0.55"


def _problem(place: str, what: str, remedy: str = _REMEDY) -> Problem:
    return Problem("gibbsteel.input.202", place, what, remedy)


_OPTIONS = ("name", "parameters", "bind_tramp_elements")


def _no_element(symbol: str, option: bool) -> list[Problem]:
    """What is wrong with a name that is neither element nor option; else nothing."""
    place = "composition"
    problem = element_problem(place, symbol, [], "")
    if problem.code != "gibbsteel.input.201":
        return []
    what, remedy = problem.what, problem.remedy
    if option:
        what = f"{symbol!r} is neither the symbol of an element nor an option"
        close = get_close_matches(symbol, _OPTIONS, n=1)
        if close and "did you mean" not in remedy:
            remedy = f"did you mean {close[0]}=?"
    elif symbol.lower() == "name":
        remedy = "give the name apart: name="
    return [Problem(problem.code, place, what, remedy)]


def _number(symbol: object, value: Any, option: bool, problems: list[Problem]) -> float:
    try:
        if is_quantity(value):
            place = f"composition, {symbol}"
            return 100.0 * magnitude(value, "dimensionless", place, _FRACTION)
        if isinstance(value, (str, bytes)):
            raise TypeError
        return float(value)
    except InputError as error:
        problems += error.problems
        return 0.0
    except (TypeError, ValueError):
        wrong = _problem(f"composition, {symbol}", f"is {value!r}")
        problems += _no_element(str(symbol), option) or [wrong]
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
            remedy = 'give weight percent by symbol, for instance {"C": 0.55}'
            raise InputError([_problem("composition", what, remedy)])
        for symbol, value in items.items():
            if symbol in result:
                place = f"composition, {symbol}"
                problems.append(_problem(place, "is given twice", "give it once"))
            option = items is keywords
            result[str(symbol)] = _number(symbol, value, option, problems)
    if problems:
        raise InputError(problems)
    return result

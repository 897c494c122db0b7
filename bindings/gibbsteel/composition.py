"""Compositions in weight percent from dicts, keywords, pandas Series or quantities."""

from __future__ import annotations

from collections.abc import Mapping
from difflib import get_close_matches
from typing import Any

from ._core import CompiledSteel, Problem, element_problem
from .arguments import as_float
from .cells import NoNumberError, is_empty, number_in
from .errors import InputError
from .headings import Heading, heading_of, heading_problem
from .parameters import default_parameters
from .texts import shown, writable
from .units import is_quantity, magnitude

_FRACTION = "give a mass per mass, or weight percent as a number"
_REMEDY = "give weight percent as a number, for instance 0.55"
_NOT_MEASURED = f"{_REMEDY}, or leave the element out where it was not measured"
_OF_A_SUM = ("gibbsteel.input.207", "gibbsteel.input.208")


def _problem(place: str, what: str, remedy: str = _REMEDY) -> Problem:
    return Problem("gibbsteel.input.202", place, what, remedy)


_OPTIONS = ("name", "parameters", "bind_tramp_elements")


def _no_element(place: str, symbol: str, option: bool) -> list[Problem]:
    """What is wrong with a name that is neither element nor option; else nothing."""
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
    elif heading_of(symbol).unit and not heading_problem(place, symbol):
        remedy = renaming(heading_of(symbol))
    return [Problem(problem.code, place, what, remedy)]


def renaming(heading: Heading) -> str:
    """How to give what stands under a heading with a unit, as a remedy.

    Examples
    --------
    >>> renaming(Heading("N", "ppm"))
    "call it 'N' and give weight percent: 1 of it is 10000 ppm"
    """
    per = heading.per_weight_percent
    remedy = f"call it {heading.symbol!r}"
    if per == 1.0:
        return remedy
    remedy += " and give weight percent"
    return remedy if per is None else f"{remedy}: 1 of it is {per:g} {heading.unit}"


def _no_number(place: str, value: Any) -> Problem:
    """What is wrong with a weight percent that is no number."""
    if is_empty(value):
        return _problem(place, f"is {value!r}", _NOT_MEASURED)
    if not isinstance(value, str):
        return _problem(place, f"is {shown(value)}")
    try:
        number = number_in(value)
    except NoNumberError as error:
        return _problem(place, error.what, error.remedy)
    sign = "a text with a decimal comma" if "," in value else "a text"
    remedy = f"give the number {number!r}; gs.steels_from_table reads texts"
    return _problem(place, f"is {value!r}, {sign}", remedy)


def _number(place: str, symbol: object, value: Any, problems: list[Problem]) -> float:
    here = f"{place}, {symbol}"
    try:
        if is_quantity(value):
            return 100.0 * magnitude(value, "dimensionless", here, _FRACTION)
        return as_float(value)
    except InputError as error:
        problems += error.problems
    except TypeError:
        problems.append(_no_number(here, value))
    return 0.0


def _further(weight_percent: Mapping[str, float], place: str) -> list[Problem]:
    """What is wrong with the numbers of a steel that could be read."""
    if place != "composition":
        return []
    try:
        CompiledSteel(dict(weight_percent), "", default_parameters(), False)
    except InputError as error:
        return [p for p in error.problems if p.code not in _OF_A_SUM]
    return []


def as_weight_percent(
    composition: Mapping[str, float] | None,
    keywords: Mapping[str, float],
    place: str = "composition",
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
            raise InputError([_problem(place, what, remedy)])
        for given, value in items.items():
            symbol = writable(str(given))
            if symbol in result:
                twice = f"{place}, {symbol}"
                problems.append(_problem(twice, "is given twice", "give it once"))
            wrong: list[Problem] = []
            number = _number(place, symbol, value, wrong)
            if wrong or heading_of(symbol).unit:
                option = items is keywords
                problems += _no_element(place, symbol, option) or wrong
            else:
                result[symbol] = number
    if problems:
        raise InputError(problems + _further(result, place))
    return result

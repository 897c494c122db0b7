"""What the columns of a table of mill certificates hold."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from ._core import Problem
from .cells import is_empty
from .headings import heading_of, heading_problem
from .texts import writable

CODE = "gibbsteel.input.329"

_RENAME = "rename all but one, and name in ignore= what is not to count"

_Rows = Sequence[tuple[Any, ...]]


@dataclass(frozen=True)
class ElementColumn:
    """A column of weight percents, or of ppm by weight."""

    number: int  # of the column, from 0
    text: str  # its heading
    symbol: str
    per_weight_percent: float


@dataclass(frozen=True)
class Columns:
    """Which column holds what, by number."""

    elements: list[ElementColumn]
    name: int | None
    beyond: int | None  # cells beyond the last heading


def trimmed(heading: Any) -> str:
    """Without the mark that spreadsheets write first in a file."""
    return writable(str(heading)).lstrip("\ufeff").strip()


def _repeated(texts: list[str]) -> dict[str, Problem]:
    """Headings of an element that several columns have.

    Not even ``ignore=`` takes them: it would throw all of them away.
    """
    found = {}
    for text in dict.fromkeys(texts):
        count = texts.count(text)
        if count > 1 and text and heading_problem("table", text) is None:
            what = f"has {count} columns headed {text!r}"
            found[text] = Problem("gibbsteel.input.321", "table", what, _RENAME)
    return found


def _beyond(headings: Sequence[Any], rows: _Rows) -> int | None:
    """The cells that a csv.DictReader found beyond the last heading.

    A DataFrame may have a column of that heading, None, too: it holds no lists.
    """
    where = headings.index(None) if None in headings else None
    is_it = where is not None and any(isinstance(row[where], list) for row in rows)
    return where if is_it else None


def _name_column(
    headings: list[str], name: str | None, problems: list[Problem]
) -> int | None:
    if name is None:
        lower = [heading.lower() for heading in headings]
        return lower.index("name") if "name" in lower else None
    count = headings.count(trimmed(name))
    if count == 1:
        return headings.index(trimmed(name))
    if count > 1:
        what = f"the table has {count} columns headed {name!r}"
        problems.append(Problem(CODE, "name", what, _RENAME))
        return None
    what = f"the table has no column {name!r}"
    remedy = "choose from: " + ", ".join(filter(None, headings))
    problems.append(Problem(CODE, "name", what, remedy))
    return None


def _is_blank(heading: str, rows: _Rows, number: int) -> bool:
    """True of a column without heading and content, as spreadsheets leave behind."""
    unnamed = heading == "" or heading.startswith("Unnamed: ")
    return unnamed and all(is_empty(row[number]) for row in rows)


def _other_column(text: str, problem: Problem) -> Problem:
    """What to do with a column that is no element."""
    remedy = f'give ignore=["{text}"], or name="{text}" where it names the steels'
    if ";" in text or "\t" in text:
        remedy = 'give the separator of the file: delimiter=";", in pandas sep=";"'
    elif problem.remedy:
        remedy = f"{problem.remedy} Or {remedy}"
    return Problem(problem.code, "table", problem.what, remedy)


def _element(number: int, text: str) -> ElementColumn | Problem:
    """The column, or why it cannot be read as that of an element."""
    problem = heading_problem("table", text)
    if problem:
        return _other_column(text, problem)
    heading = heading_of(text)
    per = heading.per_weight_percent
    if per is None:
        what = f"column {text!r} has the unit {heading.unit!r}"
        remedy = f"give {heading.symbol} in percent or ppm by weight, or "
        remedy += f'ignore=["{text}"]'
        return Problem(CODE, "table", what, remedy)
    return ElementColumn(number, text, heading.symbol, per)


def columns_of(
    headings: Sequence[Any],
    rows: _Rows,
    name: str | None,
    ignored: set[str],
    problems: list[Problem],
) -> Columns:
    """What each column is; one that is nothing is a problem."""
    texts = ["" if heading is None else trimmed(heading) for heading in headings]
    of_names = _name_column(texts, name, problems)
    beyond = _beyond(headings, rows)
    repeated = _repeated(texts)
    problems += repeated.values()
    passed = {*ignored, *repeated}
    found: dict[str, ElementColumn] = {}
    for i, text in enumerate(texts):
        if i in (of_names, beyond) or text in passed or _is_blank(text, rows, i):
            continue
        column = _element(i, text)
        if isinstance(column, Problem):
            problems.append(column)
        elif column.symbol in found:
            what = f"columns {found[column.symbol].text!r} and {text!r} are one element"
            remedy = "keep one, or name the other in ignore="
            code = "gibbsteel.input.321"
            problems.append(Problem(code, "table", what, remedy))
        else:
            found[column.symbol] = column
    if rows and not found and not problems:
        remedy = "head one by its symbol: C, C %, N ppm"
        problems.append(Problem(CODE, "table", "has no column of an element", remedy))
    return Columns(list(found.values()), of_names, beyond)

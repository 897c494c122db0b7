"""Rows of a table of mill certificates: contents, and cells that were left empty."""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass
from typing import Any

from ._core import Problem
from .cells import NoNumberError, is_empty, number_of_cell
from .certificate_columns import CODE, Columns, ElementColumn

_ALLOYING = 0.1  # [wt%], above which an element makes another steel
_MOST_ROWS = 5
_BALANCE = {"bal", "bal.", "balance", "rest"}


@dataclass(frozen=True)
class Heat:
    """One row."""

    place: str  # "row 3 (7420)"
    name: str
    cells: tuple[Any, ...]


def is_left_out(cell: Any, column: ElementColumn) -> bool:
    """True of an empty cell, and of "balance" under Fe."""
    balance = column.symbol == "Fe" and str(cell).strip().lower() in _BALANCE
    return balance or is_empty(cell)


def weight_percent(cell: Any, column: ElementColumn) -> float:
    """Of a cell that is not left out.

    Raises
    ------
    NoNumberError
    """
    in_ppm = column.per_weight_percent > 1.0
    number = number_of_cell(cell, in_ppm)
    if in_ppm and 0.0 < number < 1.0:
        remedy = "if it is weight percent, head the column so; else give 0"
        raise NoNumberError(f"is {cell!r}, below 1 ppm", remedy, CODE)
    return number / column.per_weight_percent


def _highest(cells: Sequence[Any], column: ElementColumn) -> float:
    """[wt%], of the cells that can be read and that a steel can hold."""
    found = 0.0
    for cell in cells:
        try:
            number = weight_percent(cell, column)
        except NoNumberError:
            continue
        found = max(found, number if number <= 100.0 else 0.0)
    return found


def _listed(rows: Sequence[Heat]) -> str:
    text = ", ".join(row.place for row in rows[:_MOST_ROWS])
    more = len(rows) - _MOST_ROWS
    return f"{text} and {more} more" if more > 0 else text


def _gap(heats: Sequence[Heat], column: ElementColumn) -> Problem | None:
    empty = [row for row in heats if is_empty(row.cells[column.number])]
    cells = [row.cells[column.number] for row in heats] if empty else []
    highest = _highest([cell for cell in cells if not is_empty(cell)], column)
    if highest <= _ALLOYING:
        return None
    what = f"is empty in {_listed(empty)}, where other rows hold up to "
    what += f"{highest:.4g} wt%"
    remedy = "give 0 where the steel has none, or empty_is_none=True where that holds "
    remedy += "for every empty cell"
    return Problem(CODE, f"column {column.text!r}", what, remedy)


def gaps(
    rows: Sequence[Heat], columns: Columns, modelled: Container[str]
) -> list[Problem]:
    """Empty cells of an element that other rows hold as an alloying element."""
    asked = [c for c in columns.elements if c.symbol in modelled and c.symbol != "Fe"]
    places = [c.number for c in columns.elements]
    heats = [row for row in rows if not all(is_empty(row.cells[i]) for i in places)]
    found = [_gap(heats, column) for column in asked]
    return [problem for problem in found if problem]

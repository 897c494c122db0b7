"""Steels from tables of mill certificates, one row per heat."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Mapping
from typing import Any

from ._core import ParameterSet, Problem
from .arguments import listed
from .cells import NoNumberError, is_empty
from .certificate_columns import CODE, Columns, columns_of, trimmed
from .certificate_rows import Heat, gaps, is_left_out, weight_percent
from .changed import parameter_set
from .errors import InputError
from .parameters import default_parameters
from .steel import Steel
from .texts import writable

_MOST_PROBLEMS = 30


def _no_table(place: str, what: str) -> InputError:
    remedy = "give a pandas DataFrame, a list of dicts or a csv.DictReader"
    return InputError([Problem(CODE, place, what, remedy)])


def _of_reader(table: Any) -> tuple[list[Any], list[tuple[Any, ...]]]:
    """By place: its dicts would keep the last one of two columns of one heading."""
    headings = list(table.fieldnames or [])
    width = len(headings)
    rows = []
    given: Iterable[list[str]] = table.reader
    for cells in given:
        if not cells:
            continue
        short = [table.restval] * (width - len(cells))
        rows.append((*cells[:width], *short, cells[width:]))
    return [*headings, None], rows


def _content(table: Any) -> tuple[list[Any], list[tuple[Any, ...]]]:
    """Headings, and cells row by row."""
    if hasattr(table, "columns") and hasattr(table, "itertuples"):
        rows = table.itertuples(index=False, name=None)
        return list(table.columns), list(rows)
    if type(table) is csv.DictReader:
        return _of_reader(table)
    if isinstance(table, (str, bytes, Mapping)) or not isinstance(table, Iterable):
        kind = type(table).__name__
        raise _no_table("table", f"is {kind}, no table with one row per heat")
    given = list(table)
    for number, row in enumerate(given):
        if not isinstance(row, Mapping):
            what = f"is {type(row).__name__}, no dict by heading"
            raise _no_table(f"row {number}", what)
    first = list(getattr(table, "fieldnames", None) or [])
    others = dict.fromkeys(h for row in given for h in row if h not in first)
    headings = [*first, *others]
    return headings, [tuple(row.get(h) for h in headings) for row in given]


def _name_text(cell: Any) -> str:
    """A number that a table keeps as 7411.0 is 7411."""
    if is_empty(cell):
        return ""
    if isinstance(cell, float) and cell.is_integer():
        return str(int(cell))
    return str(cell).strip()


def _row(number: int, cells: tuple[Any, ...], columns: Columns) -> Heat:
    name = "" if columns.name is None else _name_text(cells[columns.name])
    place = f"row {number} ({writable(name)})" if name else f"row {number}"
    return Heat(place, name, cells)


def _surplus(row: Heat, columns: Columns) -> list[Problem]:
    """What csv.DictReader finds beyond the last heading; empty cells are no loss."""
    cells = None if columns.beyond is None else row.cells[columns.beyond]
    if not isinstance(cells, list) or all(map(is_empty, cells)):
        return []
    what = f"has more cells than the table has columns: {cells}"
    remedy = "put texts that hold the separator in quotes, or name another one, such "
    remedy += 'as csv.DictReader(file, delimiter=";")'
    return [Problem(CODE, row.place, what, remedy)]


def _weight_percents(
    row: Heat, columns: Columns, problems: list[Problem]
) -> dict[str, float]:
    """Of one heat; cells that cannot be read are problems."""
    found: dict[str, float] = {}
    for column in columns.elements:
        cell = row.cells[column.number]
        try:
            if not is_left_out(cell, column):
                found[column.symbol] = weight_percent(cell, column)
        except NoNumberError as error:
            place = f"{row.place}, column {column.text!r}"
            problems.append(Problem(error.code, place, error.what, error.remedy))
    return found


def _steel(
    row: Heat, columns: Columns, problems: list[Problem], **settings: Any
) -> Steel | None:
    wrong = _surplus(row, columns)
    percents = _weight_percents(row, columns, wrong)
    if columns.elements and not percents and not wrong:
        what, remedy = "holds no weight percent", "take the row out of the table"
        wrong.append(Problem("gibbsteel.input.208", row.place, what, remedy))
    try:
        if percents and not wrong:
            return Steel(percents, name=row.name, **settings)
    except InputError as error:
        texts = {c.symbol: f"column {c.text!r}" for c in columns.elements}
        for p in error.problems:
            symbol = p.place.removeprefix("composition, ")
            place = f"{row.place}, {texts.get(symbol, symbol)}"
            wrong.append(Problem(p.code, place, p.what, p.remedy))
    problems += wrong
    return None


def _refuse(problems: list[Problem]) -> None:
    """All of them; of a long table the first ones and how many more there are."""
    more = len(problems) - _MOST_PROBLEMS
    if more > 0:
        what = f"has {more} problems more"
        rest = Problem(CODE, "table", what, "mend these first, then see the others")
        problems = [*problems[:_MOST_PROBLEMS], rest]
    if problems:
        raise InputError(problems)


def steels_from_table(
    table: Any,
    *,
    name: str | None = None,
    ignore: str | Iterable[str] = (),
    parameters: ParameterSet | None = None,
    bind_tramp_elements: bool = False,
    empty_is_none: bool = False,
) -> list[Steel]:
    """The steels of a table of mill certificates, one row per heat.

    Parameters
    ----------
    table : pandas DataFrame, list of dict, or csv.DictReader
        A column of an element is headed by its symbol, alone or with a unit: ``C``,
        ``C %``, ``C [wt%]``, ``C mass%``, ``N ppm``, ``N [ppm]``; weight percent where
        no unit is given. Numbers may be texts, with decimal point or decimal comma.
        Less than 1 ppm, except 0, is refused: it may be weight percent.
        Empty cells (NaN, None, "", "-", keys that a dict lacks) were not measured: the
        steel has none of that element, see `empty_is_none`. Under ``Fe``, "Bal." may
        stand for the balance.
    name : str, optional
        Column of the names of the steels; when left out, one called "name" if there is
        one.
    ignore : str or iterable of str
        Columns to leave out. Every other column that is no element is refused, so that
        nothing is lost unseen; ``No`` is a number of rows here, not nobelium.
    parameters : ParameterSet, optional
        `default_parameters` when left out.
    bind_tramp_elements : bool
        As of `Steel`.
    empty_is_none : bool
        False: an empty cell is refused where the parameter set models the element and
        another row holds more than 0.1 wt% of it, because a steel without its tungsten
        is another steel. True: every empty cell is 0.

    Returns
    -------
    list of Steel
        In the order of the rows. `screen` and `compare` take it as it is.

    Raises
    ------
    InputError
        Of all columns and cells at once, rows counted from 0. A cell such as "<0.01" is
        refused, because nobody but you knows whether it stands for none, for the limit
        or for something between; so is "1,234.5".

    Examples
    --------
    >>> import gibbsteel as gs
    >>> rows = [{"Heat": 7411, "C %": "0,56", "Cr": 4.5, "N ppm": 180, "Co": None}]
    >>> gs.steels_from_table(rows, name="Heat")
    [<Steel 7411: 0.56C 4.5Cr 0.018N, balance Fe (wt%)>]
    """
    chosen = default_parameters() if parameters is None else parameter_set(parameters)
    settings = {"parameters": chosen, "bind_tramp_elements": bind_tramp_elements}
    headings, rows = _content(table)
    problems: list[Problem] = []
    which = listed(ignore, str, "ignore", 'give headings, for instance ["Furnace"]')
    ignored = {trimmed(heading) for heading in which}
    columns = columns_of(headings, rows, name, ignored, problems)
    heats = [_row(number, cells, columns) for number, cells in enumerate(rows)]
    steels = [_steel(heat, columns, problems, **settings) for heat in heats]
    if not empty_is_none:
        problems += gaps(heats, columns, chosen.elements)
    _refuse(problems)
    return [steel for steel in steels if steel is not None]

"""Compositions of a screen: arrays, tables with headings, steels."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

import numpy as np

from ._core import Problem
from .composition import renaming
from .errors import InputError
from .headings import heading_of, heading_problem
from .names import as_names
from .steel import Steel

_CODE = "gibbsteel.input.320"
_NAMES = 'name the element of each column, for instance elements=["C", "Cr", "Mo"]'


def _refused(place: str, what: str, remedy: str) -> InputError:
    return InputError([Problem(_CODE, place, what, remedy)])


def numbers_and_elements(
    compositions: Any, elements: Iterable[str] | None
) -> tuple[Any, list[str]]:
    """The numbers as they came, and the element of each column."""
    if not hasattr(compositions, "columns"):
        if isinstance(compositions, (list, tuple)) and not compositions:
            raise _refused("compositions", "are none", "give at least one steel")
        if elements is None:
            raise _refused("elements", "are not given", _NAMES)
        return compositions, as_names(elements)
    columns = list(compositions.columns)
    if elements is None:
        elements = [c for c in columns if str(c).lower() != "name"]
        _check_columns([str(column) for column in elements])
    wanted = as_names(elements)
    missing = [name for name in wanted if name not in columns]
    if missing:
        what = f"the table has no column {missing[0]!r}"
        raise _refused("elements", what, "choose from: " + ", ".join(map(str, columns)))
    return compositions[wanted], [str(name) for name in wanted]


def _check_columns(columns: list[str]) -> None:
    """Refuses columns of a table that are no elements."""
    place = "compositions"
    wrong = {c: heading_problem(place, c) for c in columns}
    with_unit = [c for c in columns if not wrong[c] and heading_of(c).unit]
    usable = [c for c in columns if not wrong[c] and c not in with_unit]
    others = [c for c, problem in wrong.items() if problem and not problem.remedy]
    # Less than all elements are another steel: a list of them is a remedy only where no
    # other column may be one of an element, and carbon is in the list.
    whole = "C" in usable and len(usable) + len(others) == len(columns)
    listed = f"name the columns to use: elements={_quoted(usable)}"
    ignore = f", ignore={_quoted(others)}" if others else ""
    instead = f"give gs.steels_from_table(table{ignore}) instead of the table"
    problems = []
    for column in columns:
        what = f"column {column!r} is not the symbol of an element"
        problem = wrong[column]
        if column in with_unit:
            remedy = f"{renaming(heading_of(column))}; or {instead}"
        elif problem:
            what, without = problem.what, f"leave it out; or {instead}"
            remedy = problem.remedy or (listed if whole else without)
        else:
            continue
        problems.append(Problem("gibbsteel.input.201", place, what, remedy))
    if problems:
        raise InputError(problems)


def _quoted(names: Iterable[str]) -> str:
    return "[" + ", ".join(f'"{name}"' for name in names) + "]"


def as_steels(compositions: Any) -> list[Steel]:
    """The steels, where compositions are given as such; else none."""
    if isinstance(compositions, Steel):
        return [compositions]
    if not isinstance(compositions, (list, tuple)):
        return []
    steels = [one for one in compositions if isinstance(one, Steel)]
    if steels and len(steels) < len(compositions):
        raise _refused("compositions", "are not all steels", "give steels only")
    return steels


def compositions_of(
    steels: Sequence[Steel], elements: Iterable[str] | None
) -> tuple[Any, list[str]]:
    """Weight percents, 0 of an element that a steel does not have."""
    if elements is not None:
        raise _refused("elements", "are given beside steels", "leave them out")
    given = [dict(steel.analysis.given) for steel in steels]
    symbols = list(dict.fromkeys(symbol for one in given for symbol in one))
    if "Fe" in symbols:
        given = [{"Fe": 100.0 - sum(one.values()), **one} for one in given]
    return np.array([[one.get(s, 0.0) for s in symbols] for one in given]), symbols


def settings_of(steels: Sequence[Steel], given: dict[str, Any]) -> dict[str, Any]:
    """The settings of a call with those of the steels, where it gives none."""
    first, place = steels[0], "compositions"
    own = {"parameters": given.get("parameters")}
    own["bind_tramp_elements"] = given.get("bind_tramp_elements")
    if own["parameters"] is None:
        own["parameters"] = kept = first.parameters
        if any(s.parameters is not kept and s.parameters != kept for s in steels):
            remedy = "give parameters=, or screen the steels of each set apart"
            raise _refused(place, "are steels of several parameter sets", remedy)
    if own["bind_tramp_elements"] is None:
        binds = {steel._core.binds_tramp_elements for steel in steels}
        if len(binds) > 1:
            what = "are steels with and without bound tramp elements"
            remedy = "give bind_tramp_elements= True or False, or screen them apart"
            raise _refused(place, what, remedy)
        own["bind_tramp_elements"] = binds.pop()
    return {**given, **own}

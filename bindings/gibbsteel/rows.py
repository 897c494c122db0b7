"""Results as rows of columns; units are in the column names. No package needed."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from ._core import SoakWarning, State, Sweep
from .column_names import kind_column, matrix_column

Row = dict[str, Any]

_UNITS = (  # ends of column names; the first that fits counts
    ("_weight_percent", "wt%"),
    ("volume_percent", "vol%"),
    ("mass_percent", "mass%"),
    ("mole_percent", "mol%"),
    ("temperature_C", "degC"),
    ("temperature_F", "degF"),
    ("low_C", "degC"),
    ("high_C", "degC"),
    ("low_F", "degF"),
    ("high_F", "degF"),
    ("_K", "K"),
    ("_J_per_mol", "J/mol"),
    ("density_g_per_cm3", "g/cm3"),
    ("carbon_activity", "1"),
    ("soak_minutes", "min"),
    ("_um", "um"),
)


def unit_of(column: str) -> str | None:
    """Unit of a column by its name; None for texts and flags.

    Examples
    --------
    >>> unit_of("matrix_C_weight_percent"), unit_of("steel")
    ('wt%', None)
    """
    return next((unit for end, unit in _UNITS if column.endswith(end)), None)


def conditions(state: State) -> Row:
    """Steel and temperature: the first columns of every table; minutes, if any."""
    row: Row = {
        "steel": state.steel,
        "temperature_C": state.celsius,
        "temperature_F": state.fahrenheit,
    }
    if state.soak_minutes is not None:
        row["soak_minutes"] = state.soak_minutes
    return row


def warning_numbers(warnings: Iterable[SoakWarning]) -> str:
    """The last parts of the distinct codes, such as "303 310"."""
    codes = dict.fromkeys(w.code.rpartition(".")[2] for w in warnings)
    return " ".join(codes)


def trust(state: State) -> Row:
    """How far to trust the state: the last columns of every table."""
    return {"usable": state.usable, "warnings": warning_numbers(state.warnings)}


def tidy_rows(state: State) -> list[Row]:
    """One row per occurrence; one row without numbers when there is none."""
    common = conditions(state)
    rows: list[Row] = []
    for occurrence in state.occurrences:
        row: Row = {
            **common,
            "name": occurrence.name,
            "kind": occurrence.kind,
            "role": occurrence.role,
            "volume_percent": occurrence.volume_percent,
            "mass_percent": occurrence.mass_percent,
            "mole_percent": occurrence.mole_percent,
        }
        for symbol, value in occurrence.weight_percent.items():
            row[f"{symbol}_weight_percent"] = value
        rows.append({**row, **trust(state)})
    return rows or [{**common, **trust(state)}]


def wide_row(state: State, kinds: Iterable[str]) -> Row:
    """One row; a column per kind of `kinds_of` and per element of the matrix."""
    row: Row = {
        **conditions(state),
        "carbide_volume_percent": state.carbide_volume_percent,
        "carbide_mass_percent": state.carbide_mass_percent,
        "carbon_activity": state.carbon_activity,
        "density_g_per_cm3": state.density,
    }
    for kind in kinds:
        row[kind_column(kind)] = state.volume_percent_of(kind)
    for symbol, value in state.matrix.weight_percent.items():
        row[matrix_column(symbol)] = value
    return {**row, **trust(state)}


def states_of(result: State | Iterable[State]) -> list[State]:
    """The states of a sweep or another series, or the one state."""
    return [result] if isinstance(result, State) else list(result)


def other_kinds_of(result: State | Iterable[State]) -> list[str]:
    """Kinds that are neither matrix nor carbide, in order of first appearance."""
    found = (o for s in states_of(result) for o in s.occurrences)
    return list(dict.fromkeys(o.kind for o in found if o.role == "other"))


def kinds_of(result: State | Iterable[State]) -> list[str]:
    """Kinds of carbide in a result, in order of first appearance; then the others."""
    found = (o for s in states_of(result) for o in s.carbides.values())
    return [*dict.fromkeys(o.kind for o in found), *other_kinds_of(result)]


def rows_of(result: State | Sweep, *, wide: bool) -> list[Row]:
    """All rows of a state or a sweep."""
    if wide:
        kinds = kinds_of(result)
        return [wide_row(state, kinds) for state in states_of(result)]
    return [row for state in states_of(result) for row in tidy_rows(state)]


def columns_of(rows: Iterable[Row]) -> list[str]:
    """Names of all columns in order of first appearance, the flags last."""
    names = dict.fromkeys(name for row in rows for name in row)
    last = [name for name in ("usable", "warnings") if name in names]
    return [name for name in names if name not in last] + last

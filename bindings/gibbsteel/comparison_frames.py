"""Table of a comparison: one row per state."""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

import numpy as np

from ._core import Comparison, ComparisonRow
from .column_names import quantity_column, quantity_unit, steel_column
from .export import write_csv
from .optional import needed
from .rows import Row, columns_of, conditions, trust, warning_numbers
from .trace import about, trace

if TYPE_CHECKING:
    import pandas as pd


def _columns(rows: list[ComparisonRow]) -> dict[str, ComparisonRow]:
    """Column -> row: one that is there already is not told twice, another one of the
    same name gets a number."""
    found: dict[str, ComparisonRow] = {}
    for row in rows:
        name = column = quantity_column(row.label)
        number = 1
        while column in found and not _same(found[column], row):
            number += 1
            column = f"{name}_{number}"
        found[column] = row
    return found


def _same(one: ComparisonRow, other: ComparisonRow) -> bool:
    pairs = ((one.values, other.values), (one.low, other.low), (one.high, other.high))
    return all(np.array_equal(a, b, equal_nan=True) for a, b in pairs)


def _sets(comparison: Comparison) -> list[Row]:
    """Parameter set of each state, where not all have the same."""
    sets = [
        {"parameters": state.parameters, "parameters_hash": state.parameters_hash}
        for state in comparison.states
    ]
    return [{} for _ in sets] if all(one == sets[0] for one in sets) else sets


def comparison_rows(comparison: Comparison) -> list[Row]:
    """A row per state; see `comparison_to_frame`."""
    states = comparison.states
    columns = _columns(comparison.rows)
    given = [state.analysis.given for state in states]
    symbols = dict.fromkeys(symbol for analysis in given for symbol in analysis)
    sets = _sets(comparison)
    rows = []
    for i, state in enumerate(states):
        row = {**conditions(state), **sets[i]}
        row |= {steel_column(e): given[i].get(e, 0.0) for e in symbols}
        for name, numbers in columns.items():
            row[name] = numbers.values[i]
            if numbers.low:
                row[f"{name}_low"] = numbers.low[i]
                row[f"{name}_high"] = numbers.high[i]
        row |= trust(state)
        row["warnings"] = warning_numbers(comparison.warnings_of(i))
        rows.append(row)
    return rows


def comparison_to_frame(self: Comparison) -> pd.DataFrame:
    """Table of a comparison, one row per state; units are in the column names.

    Returns
    -------
    pandas.DataFrame
        Steel, temperature; ``parameters`` and ``parameters_hash`` where the states
        stand on several sets; analysis as given, 0 where an element is not listed: the
        state was computed without it; one column for every row of the comparison, named
        as in the tables of sweeps and screens, and ``..._low`` and ``..._high`` of
        those that have a band; how far to trust the state, as in `Sweep.to_frame`.
        ``attrs`` as there.

    Raises
    ------
    ImportError
        pandas is not installed.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75}, name="heat 7")
    >>> hardness = gs.quantities.hardness_hrc()
    >>> both = gs.compare(steel, celsius=[1050, 1100], quantities=hardness)
    >>> frame = both.to_frame()
    >>> [name for name in frame.columns if "HRC" in name]
    ['as_quenched_hardness_HRC', 'as_quenched_hardness_HRC_low', \
'as_quenched_hardness_HRC_high']
    """
    pandas = needed("pandas", "to_frame()")
    rows = comparison_rows(self)
    units: dict[str, str] = {}
    for name, row in _columns(self.rows).items():
        for end in ("", "_low", "_high"):
            units[name + end] = quantity_unit(row.label)
    frame: pd.DataFrame = pandas.DataFrame(rows, columns=columns_of(rows))
    return trace(frame, about(self.states), units=units)


def comparison_to_csv(self: Comparison, path: str | os.PathLike[str]) -> None:
    """Write the table of `Comparison.to_frame` as CSV; needs no other package.

    Parameters
    ----------
    path : path
        Written as UTF-8, replaced when it exists.

    Notes
    -----
    The file begins with the lines that `State.to_csv` writes; name and analysis of
    every steel are among them.

    Examples
    --------
    >>> import gibbsteel as gs, pathlib, tempfile
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75}, name="heat 7")
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     file = pathlib.Path(folder, "heats.csv")
    ...     gs.compare([steel, steel.changed(C=0.6)], celsius=1100).to_csv(file)
    ...     [line for line in file.read_text().splitlines() if "# steel" in line]
    ['# steel: heat 7', '# steel: heat 7, 0.6 C']
    """
    write_csv(self.states, self.warnings, comparison_rows(self), path)

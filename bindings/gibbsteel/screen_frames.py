"""Table of a screen: pandas, imported on use."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from . import _core
from ._core import ScreenTable
from .column_names import (
    kind_column,
    matrix_column,
    quantity_column,
    quantity_unit,
    steel_column,
)
from .optional import needed
from .trace import about_set, trace

if TYPE_CHECKING:
    import pandas as pd

_Columns = dict[str, Any]


def screen_to_frame(table: ScreenTable, *, absent: bool = False) -> pd.DataFrame:
    """Table of a screen, indexed by row; units are in the column names.

    Parameters
    ----------
    table : ScreenTable
    absent : bool
        True: also columns of the kinds that no row holds, and of the elements of the
        parameter file that no matrix holds.

    Returns
    -------
    pandas.DataFrame
        What was soaked: ``composition``, counted from 0 in the order given,
        temperatures, weight percents as given. Then the numbers. Last ``usable``,
        status and certificate as words, and ``warnings``, codes such as ``"303 310"``.
        ``attrs`` as in `Sweep.to_frame`, ``warning_texts`` by code, and
        ``table_warnings`` where there are any.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> table = gs.screen([[0.8], [-1.0]], ["C"], celsius=700)
    >>> frame = table.to_frame()
    >>> list(frame["status"])
    ['usable', 'composition negative']
    >>> list(frame.columns[:4])
    ['composition', 'temperature_C', 'temperature_F', 'steel_C_weight_percent']
    """
    pandas = needed("pandas", "to_frame()")
    data = {**_conditions(table), **_numbers(table, absent)}
    units = _add_quantities(table, data)
    data["usable"] = table.usable
    data["status"] = np.array(table.status_names)[table.status]
    data["certificate"] = np.array(table.certificate_names)[table.certificate]
    data["warnings"] = _warnings(table)
    rows = pandas.RangeIndex(table.first_row, table.next_row, name="row")
    frame: pd.DataFrame = pandas.DataFrame(data, index=rows)
    hot = table.at_soak_temperature
    of_table = [str(warning) for warning in table.table_warnings]
    told = {"table_warnings": of_table} if of_table else {}
    return trace(
        frame,
        about_set(table.parameters, table.parameters_hash, hot),
        units=units,
        library_version=_core.version,
        volumes_at="soak temperature" if hot else "room temperature",
        warning_texts=table.warning_texts,
        **told,
    )


def _conditions(table: ScreenTable) -> _Columns:
    data: _Columns = {}
    if table.rows_per_composition:
        rows = np.arange(table.first_row, table.next_row)
        data["composition"] = rows // table.rows_per_composition
    data["temperature_C"] = table.celsius
    data["temperature_F"] = table.fahrenheit
    for e, symbol in enumerate(table.steel_elements):
        data[steel_column(symbol)] = table.steel_weight_percent[:, e]
    return data


def _numbers(table: ScreenTable, absent: bool) -> _Columns:
    data: _Columns = {"carbide_volume_percent": table.carbide_volume_percent}
    for k, kind in enumerate(table.kinds):
        volumes = table.volume_percent[:, k]
        if absent or np.any(volumes > 0.0):
            data[kind_column(kind)] = volumes
    for e, symbol in enumerate(table.elements):
        content = table.matrix_weight_percent[:, e]
        if absent or symbol in table.steel_elements or np.any(content > 0.0):
            data[matrix_column(symbol)] = content
    data["carbon_activity"] = table.carbon_activity
    data["gibbs_energy_J_per_mol"] = table.gibbs_energy
    return data


def _add_quantities(table: ScreenTable, data: _Columns) -> dict[str, str]:
    """One that is there already, such as carbon in the matrix, is not told twice.

    Returns the units of what was added.
    """
    units: dict[str, str] = {}
    for q, label in enumerate(table.quantities):
        values, name = table.quantity[:, q], quantity_column(label)
        if name in data:
            if np.array_equal(data[name], values, equal_nan=True):
                continue
            name = label
        data[name] = values
        units[name] = quantity_unit(label)
    return units


def _warnings(table: ScreenTable) -> Any:
    """The codes of each row; rows of an earlier version have only their number."""
    sets, place = np.unique(table.warning_bits, return_inverse=True)
    texts = np.array([_codes(int(bits)) for bits in sets], dtype=object)[place]
    unknown = (table.warning_bits == 0) & (table.warnings > 0)
    texts[unknown] = "unknown"
    return texts


def _codes(bits: int) -> str:
    return " ".join(str(300 + n) for n in range(64) if bits >> n & 1)

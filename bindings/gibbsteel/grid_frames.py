"""Tables of a grid of soaks: pandas and xarray, imported on use."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from ._core import Quantity, SoakGrid, SweptVariable
from .column_names import kind_column, matrix_column, steel_column
from .optional import needed
from .quantities import carbide_volume_percent, matrix, volume_percent
from .rows import Row, columns_of, kinds_of, tidy_rows, warning_numbers
from .trace import about, about_set, trace

if TYPE_CHECKING:
    import pandas as pd


def _column(variable: SweptVariable) -> str:
    if variable.is_temperature:
        return "temperature_C"
    return steel_column(variable.name)


def _quantities(grid: SoakGrid) -> dict[str, Quantity]:
    """Column -> quantity: what both tables hold."""
    found = {"carbide_volume_percent": carbide_volume_percent()}
    for kind in kinds_of([state for state in grid.states if state]):
        found[kind_column(kind)] = volume_percent(kind)
    symbols: dict[str, None] = {}
    for state in grid.states:
        symbols |= dict.fromkeys(state.matrix.weight_percent if state else ())
    for symbol in symbols:
        found[matrix_column(symbol)] = matrix(symbol)
    return found


def _origin(grid: SoakGrid) -> dict[str, str]:
    """From the soaks that were done; they stand on one parameter set and one basis."""
    done = (state for state in grid.states if state)
    first = next(done, None)
    if first is None:
        return about_set(grid.parameters, grid.parameters_hash)
    return about([first])


def _attributes(grid: SoakGrid) -> dict[str, Any]:
    found: dict[str, Any] = {"steel": grid.steel}
    if grid.celsius is not None:
        found["temperature_C"] = grid.celsius
    return found


def _tidy(grid: SoakGrid, first: Any, second: Any) -> pd.DataFrame:
    """One row per cell and occurrence; the swept temperature is in its rows."""
    names = {_column(grid.first): first, _column(grid.second): second}
    rows: list[Row] = []
    for i, state in enumerate(grid.states):
        swept = {name: values[i] for name, values in names.items()}
        of_state = tidy_rows(state) if state else [{}]
        rows += [{**swept, **row, "done": state is not None} for row in of_state]
    pandas = needed("pandas", "to_frame()")
    frame: pd.DataFrame = pandas.DataFrame(rows, columns=columns_of(rows))
    return frame


def grid_to_frame(grid: SoakGrid, *, wide: bool = True) -> pd.DataFrame:
    """Table of a grid, one row per cell; units are in the column names.

    Parameters
    ----------
    grid : SoakGrid
    wide : bool
        False: one row per cell and occurrence, as `State.to_frame`.

    Returns
    -------
    pandas.DataFrame
        The two swept variables; carbide by kind; composition of the matrix; ``done``,
        ``usable``, and ``warnings``, codes such as ``"303 310"``. A cell that was not
        done or is not usable keeps its row without numbers. ``attrs`` as in
        `Sweep.to_frame`, and steel and temperature where they are not swept.
    """
    pandas = needed("pandas", "to_frame()")
    rows, columns = np.meshgrid(grid.first.values, grid.second.values, indexing="ij")
    if not wide:
        tidy = _tidy(grid, rows.ravel(), columns.ravel())
        return trace(tidy, _origin(grid), **_attributes(grid))
    data: dict[str, Any] = {
        _column(grid.first): rows.ravel(),
        _column(grid.second): columns.ravel(),
    }
    for name, quantity in _quantities(grid).items():
        data[name] = grid.array(quantity).ravel()
    data["done"] = [state is not None for state in grid.states]
    data["usable"] = [state is not None and state.usable for state in grid.states]
    data["warnings"] = [warning_numbers(s.warnings) if s else "" for s in grid.states]
    frame = pandas.DataFrame(data)
    return trace(frame, _origin(grid), **_attributes(grid))


def grid_to_xarray(grid: SoakGrid) -> Any:
    """Dataset of a grid; the two swept variables are its dimensions.

    Returns
    -------
    xarray.Dataset
        The numbers of `grid_to_frame`, each with its ``units``; ``attrs`` as there.
    """
    xarray = needed("xarray", "to_xarray()")
    dims = (_column(grid.first), _column(grid.second))
    variables = {
        name: (dims, grid.array(quantity), {"units": quantity.unit})
        for name, quantity in _quantities(grid).items()
    }
    usable = [state is not None and state.usable for state in grid.states]
    variables["usable"] = (dims, np.reshape(usable, grid.shape), {})
    coordinates = {
        name: (name, variable.values, {"units": variable.unit})
        for name, variable in zip(dims, (grid.first, grid.second), strict=True)
    }
    attributes = {**_origin(grid), **_attributes(grid)}
    return xarray.Dataset(variables, coordinates, attributes)

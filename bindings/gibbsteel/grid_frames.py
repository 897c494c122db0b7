"""Tables of a grid of soaks: pandas and xarray, imported on use."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from ._core import Quantity, SoakGrid, SweptVariable
from .quantities import carbide_volume_percent, matrix, volume_percent

if TYPE_CHECKING:
    import pandas as pd


def _package(name: str, method: str) -> Any:
    import importlib

    try:
        return importlib.import_module(name)
    except ImportError as error:
        raise ImportError(
            f"{method} needs the package {name} (Debian: python3-{name})"
        ) from error


def _column(variable: SweptVariable) -> str:
    if variable.is_temperature:
        return "temperature_C"
    return f"steel_{variable.name}_weight_percent"


def _quantities(grid: SoakGrid) -> dict[str, Quantity]:
    """Column -> quantity: what both tables hold."""
    found = {"carbide_volume_percent": carbide_volume_percent()}
    for kind in grid.carbide_kinds:
        found[f"{kind}_volume_percent"] = volume_percent(kind)
    symbols: dict[str, None] = {}
    for state in grid.states:
        symbols |= dict.fromkeys(state.matrix.weight_percent if state else ())
    for symbol in symbols:
        found[f"matrix_{symbol}_weight_percent"] = matrix(symbol)
    return found


def _attributes(grid: SoakGrid) -> dict[str, Any]:
    found: dict[str, Any] = {
        "steel": grid.steel,
        "parameters": grid.parameters,
        "parameters_hash": grid.parameters_hash,
    }
    if grid.celsius is not None:
        found["temperature_C"] = grid.celsius
    return found


def grid_to_frame(grid: SoakGrid) -> pd.DataFrame:
    """Table of a grid, one row per cell; units are in the column names.

    Parameters
    ----------
    grid : SoakGrid

    Returns
    -------
    pandas.DataFrame
        The two swept variables; carbide by kind; composition of the matrix; ``done``
        and ``usable``. A cell that was not done or is not usable keeps its row without
        numbers. ``attrs`` holds title and hash of the parameter set.
    """
    pandas = _package("pandas", "to_frame()")
    rows, columns = np.meshgrid(grid.first.values, grid.second.values, indexing="ij")
    data: dict[str, Any] = {
        _column(grid.first): rows.ravel(),
        _column(grid.second): columns.ravel(),
    }
    for name, quantity in _quantities(grid).items():
        data[name] = grid.array(quantity).ravel()
    data["done"] = [state is not None for state in grid.states]
    data["usable"] = [state is not None and state.usable for state in grid.states]
    frame = pandas.DataFrame(data)
    frame.attrs.update(_attributes(grid))
    return frame


def grid_to_xarray(grid: SoakGrid) -> Any:
    """Dataset of a grid; the two swept variables are its dimensions.

    Returns
    -------
    xarray.Dataset
        The numbers of `grid_to_frame`, each with its ``units``.
    """
    xarray = _package("xarray", "to_xarray()")
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
    return xarray.Dataset(variables, coordinates, _attributes(grid))

"""Tables for analysis: pandas and xarray, imported on use."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

import numpy as np

from ._core import State, Sweep
from .optional import needed
from .rows import columns_of, kinds_of, rows_of, states_of
from .trace import about, trace

if TYPE_CHECKING:
    import pandas as pd


def to_frame(self: State | Sweep, *, wide: bool = False) -> pd.DataFrame:
    """Table of a state or a sweep; units are in the column names.

    Parameters
    ----------
    wide : bool
        False: one row per temperature and occurrence. True: one row per temperature,
        one column per kind of carbide, for graphite and for liquid where they occur,
        and per element of the matrix.

    Returns
    -------
    pandas.DataFrame
        ``attrs`` holds what the table can be traced by: library version, title and
        edition and hash of the parameter set, basis, caution, and ``units`` by column.
        A state that is not usable keeps its row, with ``usable`` False and no numbers.
        ``usable`` True says that the calculation converged and was checked; it does
        not say that the parameter file is right here: read ``warnings``, codes such as
        ``"303 310"``.

    Raises
    ------
    ImportError
        pandas is not installed.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> state = gs.Steel({"C": 0.8}).soak(celsius=700)
    >>> list(state.to_frame()["name"])
    ['ferrite', 'M3C']
    """
    pandas = needed("pandas", "to_frame()")
    rows = rows_of(self, wide=wide)
    frame: pd.DataFrame = pandas.DataFrame(rows, columns=columns_of(rows))
    return trace(frame, about(states_of(self)))


def _grid(
    states: list[State], names: list[str], value: Callable[[State, str], float]
) -> Any:
    numbers = [value(state, name) for state in states for name in names]
    return np.array(numbers, dtype=np.float64).reshape(len(states), len(names))


def _described(dimensions: tuple[str, ...], values: Any, unit: str, name: str) -> Any:
    return dimensions, values, {"units": unit, "long_name": name}


def to_xarray(self: Sweep) -> Any:
    """The sweep as labelled arrays; needs xarray.

    Returns
    -------
    xarray.Dataset
        Dimension ``temperature_C``, and ``kind`` and ``element``; every variable has
        ``units`` and ``long_name``, which xarray's plots read. ``attrs`` as in
        `to_frame`. A state that is not usable is NaN.

    Raises
    ------
    ImportError
        xarray is not installed.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> sweep = gs.Steel({"C": 0.8}).sweep(celsius=[650, 700])
    >>> sweep.to_xarray()["volume_percent"].dims          # doctest: +SKIP
    ('temperature_C', 'kind')
    """
    xarray = needed("xarray", "to_xarray()")
    states = states_of(self)
    kinds = kinds_of(self)
    elements = list(dict.fromkeys(e for s in states for e in s.matrix.weight_percent))
    nan = float("nan")
    along = ("temperature_C",)
    by_kind, by_element = (*along, "kind"), (*along, "element")
    total = [s.carbide_volume_percent for s in states]
    celsius = [s.celsius for s in states]
    volumes = _grid(states, kinds, lambda s, kind: s.volume_percent_of(kind))
    matrix = _grid(states, elements, lambda s, e: s.matrix.weight_percent.get(e, nan))
    return xarray.Dataset(
        {
            "carbide_volume_percent": _described(along, total, "vol%", "all carbides"),
            "volume_percent": _described(by_kind, volumes, "vol%", "phase"),
            "matrix_weight_percent": _described(by_element, matrix, "wt%", "matrix"),
        },
        coords={
            "temperature_C": _described(along, celsius, "degC", "holding temperature"),
            "kind": kinds,
            "element": elements,
        },
        attrs=about(states),
    )

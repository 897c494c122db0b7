"""Table of a short soak: what was counted, and the matrix with its band."""

from __future__ import annotations

import math
import os
from typing import TYPE_CHECKING, Any

from ._core import CarbideInBalance, MatrixBand, ShortSoak
from .export import write_csv
from .optional import needed
from .rows import Row, columns_of, conditions, trust
from .trace import about, trace

if TYPE_CHECKING:
    import pandas as pd


def _scatter(deviation: float) -> float:
    """NaN where none was given."""
    return deviation if deviation > 0.0 else math.nan


def _carbide(carbide: CarbideInBalance, smallest: dict[str, float | None]) -> Row:
    """
    Parameters
    ----------
    smallest : dict
        Of each kind that was counted; empty where all carbide is computed.
    """
    size = smallest.get(carbide.kind)
    return {
        "part": "carbide",
        "name": carbide.kind,
        "unit": "vol%",
        "value": carbide.volume_percent,
        "low": math.nan,
        "high": math.nan,
        "long_hold": carbide.long_hold_volume,
        "standard_deviation": _scatter(carbide.standard_deviation),
        "smallest_counted_um": math.nan if size is None else size,
        "kept": bool(smallest) and not carbide.measured,
    }


def _element(band: MatrixBand) -> Row:
    return {
        "part": "matrix",
        "name": band.element,
        "unit": "wt%",
        "value": band.value,
        "low": band.low,
        "high": band.high,
        "long_hold": band.long_hold,
        "standard_deviation": _scatter(band.standard_deviation),
        "smallest_counted_um": math.nan,
        "kept": False,
    }


def short_soak_rows(soak: ShortSoak) -> list[Row]:
    """A row per carbide, then one per element of the matrix."""
    smallest = {count.kind: count.smallest_counted for count in soak.measured}
    rows = [_carbide(carbide, smallest) for carbide in soak.carbides]
    rows += [_element(band) for band in soak.bands]
    state = soak.state
    return [{**conditions(state), **row, **trust(state)} for row in rows]


def short_soak_to_frame(self: ShortSoak) -> pd.DataFrame:
    """Table of a short soak: a row per carbide, then one per element of the matrix.

    Returns
    -------
    pandas.DataFrame
        ``value``, ``low``, ``high``, ``long_hold`` and ``standard_deviation`` are in
        the unit that stands in the column ``unit``. Of carbide ``value`` is as counted
        or computed, its standard deviation that of the count, ``kept`` True where it
        was not counted beside other carbide that was; only the matrix has a band. NaN
        is what is not known.
        ``attrs`` as in `State.to_frame`; that is the table of ``soak.state``.

    Raises
    ------
    ImportError
        pandas is not installed.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> frame = steel.soak(celsius=845).timed_soak(30).to_frame()
    >>> frame[["part", "name", "value", "high"]].head(3).round(2)
          part name  value   high
    0  carbide  M3C   5.99    NaN
    1   matrix   Fe  97.81  97.91
    2   matrix    C   0.64   0.79
    """
    rows = short_soak_rows(self)
    pandas = needed("pandas", "to_frame()")
    frame: pd.DataFrame = pandas.DataFrame(rows, columns=columns_of(rows))
    return trace(frame, about([self.state]))


def short_soak_to_csv(self: ShortSoak, path: str | os.PathLike[str]) -> None:
    """Write the table of `ShortSoak.to_frame` as CSV; needs no other package.

    Parameters
    ----------
    path : path
        Written as UTF-8, replaced when it exists.

    Notes
    -----
    The file begins with the lines that `State.to_csv` writes.

    Examples
    --------
    >>> import gibbsteel as gs, pathlib, tempfile
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     file = pathlib.Path(folder, "soak.csv")
    ...     steel.soak(celsius=845).timed_soak(30).to_csv(file)
    ...     file.read_text().splitlines()[4]
    '# limit: timed soak of 30 min, matrix by mass balance'
    """
    write_csv([self.state], self.state.warnings, short_soak_rows(self), path)

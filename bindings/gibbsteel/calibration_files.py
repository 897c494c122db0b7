"""What becomes of a calibration: a file, and tables (pandas, imported on use)."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING, Any

from ._core import Calibration, Problem
from .errors import InputError
from .optional import needed
from .trace import about_set, trace

if TYPE_CHECKING:
    import pandas as pd


def save_layer(self: Calibration, path: str | os.PathLike[str]) -> None:
    """Write the layer as a file for `load_parameters`.

    Parameters
    ----------
    path : path
        Written as UTF-8, replaced when it exists.

    Raises
    ------
    InputError
        There is no layer (gibbsteel.input.303).

    Examples
    --------
    >>> import tempfile
    >>> import gibbsteel as gs
    >>> heat = gs.Steel({"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8}, name="D2")
    >>> carbide = gs.quantities.carbide_volume_percent()
    >>> counted = gs.measurement(heat, carbide, 12.5, 1.0, celsius=1030)
    >>> fit = gs.calibrate([counted], {"/phases/M7C3/energy/2/terms/1": 3000.0})
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     fit.save_layer(f"{folder}/fitted.json")
    """
    if not self.usable:
        what = f"the calibration has no layer: {self.reason}"
        remedy = "mend the reason and calibrate again"
        raise InputError([Problem("gibbsteel.input.303", "layer", what, remedy)])
    Path(path).write_text(self.layer, encoding="utf-8")


_MEASUREMENT = {
    "steel": "steel",
    "record": "record",
    "temperature_C": "celsius",
    "quantity": "quantity",
    "unit": "unit",
    "measured": "value",
    "uncertainty": "uncertainty",
    "before": "before",
    "after": "after",
    "residual_before": "residual_before",
    "residual_after": "residual_after",
    "residual_left_out": "residual_left_out",
    "weight": "weight",
    "held_back": "held_back",
    "left_out": "left_out",
    "reason": "reason",
}
_NUMBER = "place text unit before after prior_deviation deviation ratio seen".split()


def _frame(self: Calibration, rows: list[dict[str, Any]], what: str) -> pd.DataFrame:
    frame: pd.DataFrame = needed("pandas", what).DataFrame(rows)
    trace(frame, about_set(self.below, ""), status=self.status)
    if self.parameters is not None:
        frame.attrs["calibrated_hash"] = self.parameters.content_hash
    return frame


def calibration_to_frame(self: Calibration) -> pd.DataFrame:
    """Table of the measurements, one row each.

    Returns
    -------
    pandas.DataFrame
        Numbers are in the unit that stands in the column ``unit``; residuals are in
        uncertainties.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heat = gs.Steel({"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8}, name="D2")
    >>> carbide = gs.quantities.carbide_volume_percent()
    >>> counted = gs.measurement(heat, carbide, 12.5, 1.0, celsius=1030)
    >>> fit = gs.calibrate([counted], {"/phases/M7C3/energy/2/terms/1": 3000.0})
    >>> fit.to_frame()["steel"].tolist()
    ['D2']
    """
    rows = [
        {column: getattr(m, name) for column, name in _MEASUREMENT.items()}
        for m in self.measurements
    ]
    return _frame(self, rows, "to_frame()")


def numbers_to_frame(self: Calibration) -> pd.DataFrame:
    """Table of the numbers, one row each.

    Returns
    -------
    pandas.DataFrame
        In the unit that stands in the column ``unit``.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heat = gs.Steel({"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8}, name="D2")
    >>> carbide = gs.quantities.carbide_volume_percent()
    >>> counted = gs.measurement(heat, carbide, 12.5, 1.0, celsius=1030)
    >>> fit = gs.calibrate([counted], {"/phases/M7C3/energy/2/terms/1": 3000.0})
    >>> fit.numbers_to_frame()["unit"].tolist()
    ['J/mol']
    """
    rows = [{name: getattr(n, name) for name in _NUMBER} for n in self.numbers]
    return _frame(self, rows, "numbers_to_frame()")

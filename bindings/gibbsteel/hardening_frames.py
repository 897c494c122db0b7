"""Table of hardening estimates: one row per estimate."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ._core import HardeningEstimates, estimates_provenance
from .optional import needed
from .trace import trace

if TYPE_CHECKING:
    import pandas as pd


def estimates_to_frame(self: HardeningEstimates) -> pd.DataFrame:
    """Table of hardening estimates, one row each.

    Returns
    -------
    pandas.DataFrame
        Steel, temperature of the soak, coldest temperature of the quench; ``name``,
        ``value``, ``low`` and ``high`` in the ``unit`` beside them, NaN where not
        known; ``equation``, ``source``, ``in_range`` and ``remarks`` as those of an
        Estimate. ``attrs`` as in `State.to_frame`, with the limit of the soak, the
        family of steels and the warnings.

    Raises
    ------
    ImportError
        pandas is not installed.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
    >>> frame = steel.soak(celsius=1120).hardening().to_frame()
    >>> list(frame["unit"])
    ['C', 'vol%', 'vol%', 'HV', 'HRC', 'um']
    """
    pandas = needed("pandas", "to_frame()")
    estimates = (
        self.martensite_start,
        self.retained_austenite,
        self.retained_austenite_of_matrix,
        self.hardness_hv,
        self.hardness_hrc,
        self.grain_diameter,
    )
    rows = [
        {
            "steel": self.steel,
            "temperature_C": self.soak_celsius,
            "coldest_C": self.coldest_celsius,
            "name": estimate.name,
            "value": estimate.value,
            "low": estimate.low,
            "high": estimate.high,
            "unit": estimate.unit,
            "equation": estimate.equation,
            "source": estimate.source,
            "in_range": estimate.in_range,
            "remarks": "; ".join(estimate.remarks),
        }
        for estimate in estimates
    ]
    frame: pd.DataFrame = pandas.DataFrame(rows)
    return trace(
        frame,
        estimates_provenance(self),
        units={"coldest_C": "degC"},
        family=self.family.name,
        warnings=[str(warning) for warning in self.warnings],
    )

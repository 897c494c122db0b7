"""Tables of bands (pandas, imported on use)."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from ._core import ParameterBand, QuantityBand, ToleranceBand
from .trace import about, trace

if TYPE_CHECKING:
    import pandas as pd


def _row(quantity: QuantityBand, percentiles: list[float]) -> dict[str, Any]:
    row: dict[str, Any] = {
        "quantity": quantity.name,
        "unit": quantity.unit,
        "nominal": quantity.nominal,
        "samples": quantity.sampled.count,
        "mean": quantity.sampled.mean,
        "standard_deviation": quantity.sampled.standard_deviation,
    }
    for percent, value in zip(percentiles, quantity.sampled.percentiles):
        row[f"percentile_{percent:g}"] = value
    row["first_order_mean"] = quantity.first_order.mean
    row["first_order_standard_deviation"] = quantity.first_order.standard_deviation
    row["first_order_one_sided"] = quantity.first_order.one_sided
    row["lowest_corner"] = quantity.lowest_corner.value
    row["highest_corner"] = quantity.highest_corner.value
    for contribution in quantity.contributions:
        row[f"share_{contribution.input}"] = contribution.share
        row[f"sampled_share_{contribution.input}"] = contribution.sampled_share
    return row


def band_to_frame(band: ToleranceBand | ParameterBand) -> pd.DataFrame:
    """Table of a band, one row per quantity.

    Parameters
    ----------
    band : ToleranceBand or ParameterBand

    Returns
    -------
    pandas.DataFrame
        Numbers are in the unit that stands in the column ``unit``; the columns
        ``share_...`` and ``sampled_share_...`` are shares of the variance, 0 to 1.
        ``attrs`` as in `State.to_frame`, and the warnings.
    """
    try:
        import pandas
    except ImportError as error:
        raise ImportError(
            "to_frame() needs the package pandas (Debian: python3-pandas)"
        ) from error
    frame = pandas.DataFrame([_row(q, band.percentiles) for q in band.quantities])
    shares = {
        name: "1" for name in frame if name.startswith(("share_", "sampled_share_"))
    }
    warnings = [warning.text for warning in band.warnings]
    return trace(frame, about([band.nominal]), units=shares, warnings=warnings)

"""Table of a screen: pandas, imported on use."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from . import _core
from ._core import ScreenTable
from .optional import needed

if TYPE_CHECKING:
    import pandas as pd


def screen_to_frame(table: ScreenTable) -> pd.DataFrame:
    """Table of a screen, indexed by row; units are in the column names.

    Parameters
    ----------
    table : ScreenTable

    Returns
    -------
    pandas.DataFrame
        Status and certificate as words, then the numbers; ``attrs`` holds the
        library version, title and hash of the parameter set, and the volume basis.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> table = gs.screen([[0.8], [-1.0]], ["C"], celsius=700)
    >>> list(table.to_frame()["status"])
    ['usable', 'composition negative']
    """
    pandas = needed("pandas", "to_frame()")
    data: dict[str, Any] = {
        "status": np.array(table.status_names)[table.status],
        "certificate": np.array(table.certificate_names)[table.certificate],
        "warnings": table.warnings,
        "carbide_volume_percent": table.carbide_volume_percent,
    }
    for k, kind in enumerate(table.kinds):
        data[f"{kind}_volume_percent"] = table.volume_percent[:, k]
    for e, symbol in enumerate(table.elements):
        data[f"matrix_{symbol}_weight_percent"] = table.matrix_weight_percent[:, e]
    data["carbon_activity"] = table.carbon_activity
    data["gibbs_energy_J_per_mol"] = table.gibbs_energy
    for q, label in enumerate(table.quantities):
        data[label] = table.quantity[:, q]
    rows = pandas.RangeIndex(table.first_row, table.next_row, name="row")
    frame = pandas.DataFrame(data, index=rows)
    basis = "soak temperature" if table.at_soak_temperature else "room temperature"
    frame.attrs.update(
        library_version=_core.version,
        parameters=table.parameters,
        parameters_hash=table.parameters_hash,
        volumes_at=basis,
    )
    return frame

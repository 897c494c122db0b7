"""Section maps as tables."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ._core import SectionMap
from .trace import about_set, trace

if TYPE_CHECKING:
    import pandas as pd


def section_to_frame(section: SectionMap) -> pd.DataFrame:
    """Points of all boundaries, one row each, with units in the column names.

    Parameters
    ----------
    section : SectionMap
        What `Steel.section_map` returns.

    Returns
    -------
    pandas.DataFrame
        Columns: number of the boundary, both coordinates, the phases on both sides
        (walking along the points), whether it is a reaction at one temperature.
        ``attrs`` as in `State.to_frame`, without a basis: there are no volumes.
    """
    try:
        import pandas as pd
    except ImportError as error:
        raise ImportError(
            "to_frame() needs the package pandas (Debian: python3-pandas)"
        ) from error
    rows = [
        (number, *point, " + ".join(b.left), " + ".join(b.right), b.invariant)
        for number, b in enumerate(section.boundaries)
        for point in b.points.tolist()
    ]
    names = [
        "boundary",
        section.x.label,
        section.y.label,
        "left",
        "right",
        "invariant",
    ]
    frame = pd.DataFrame(rows, columns=names)
    axes = (section.x, section.y)
    units = {a.label: "degC" if a.unit == "C" else a.unit for a in axes}
    origin = about_set(section.parameters, section.parameters_hash)
    return trace(frame, origin, units=units, steel=section.steel)

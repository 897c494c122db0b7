"""Section maps as tables."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ._core import SectionMap

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
    return pd.DataFrame(rows, columns=names)

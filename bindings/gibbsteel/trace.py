"""What a table can be traced by: library, data, basis, caution, units."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Any

from ._core import State, provenance
from .rows import unit_of

if TYPE_CHECKING:
    import pandas as pd


def about(states: Iterable[State]) -> dict[str, str]:
    """Library, parameter file with edition and hash, limit, basis, caution.

    Where the states differ all are told, with " | " between them; empty without states.
    """
    told: dict[str, dict[str, None]] = {}
    for state in states:
        for label, text in provenance(state).items():
            told.setdefault(label, {})[text] = None
    return {label: " | ".join(texts) for label, texts in told.items()}


def trace(
    frame: pd.DataFrame,
    origin: Mapping[str, str],
    *,
    units: Mapping[str, str] | None = None,
    **more: Any,
) -> pd.DataFrame:
    """The frame, with its origin, units by column and what else is told in ``attrs``.

    Parameters
    ----------
    frame : pandas.DataFrame
    origin : mapping of str to str
        As `about` gives it.
    units : mapping of str to str, optional
        Of columns whose name does not end in a unit.
    more : keywords
        Further entries, such as ``warnings``.
    """
    named = {name: unit_of(name) for name in frame.columns}
    frame.attrs.update(origin)
    frame.attrs["units"] = {name: unit for name, unit in named.items() if unit}
    for name, unit in (units or {}).items():
        if name in frame.columns:
            frame.attrs["units"][name] = unit
    frame.attrs.update(more)
    return frame

"""What a table can be traced by: library, data, basis, caution, units."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Any

from ._core import State, long_hold_provenance, provenance
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


def about_search(parameters: str, *states: State) -> dict[str, str]:
    """The same of a search, from those of its states that were soaked.

    Read from an early pickle it may have none: then without hash and basis.
    """
    soaked = [state for state in states if state.parameters_hash]
    return about(soaked) or about_set(parameters, "")


def about_set(
    parameters: str, parameters_hash: str, at_soak_temperature: bool | None = None
) -> dict[str, str]:
    """The same of long holds that keep no state; what is not known is left out."""
    told = long_hold_provenance(parameters, parameters_hash, at_soak_temperature)
    return {label: text for label, text in told.items() if text}


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

"""Tables (pandas, imported on use)."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from ._core import State, Sweep

if TYPE_CHECKING:
    import pandas as pd


def _pandas() -> Any:
    try:
        import pandas
    except ImportError as error:
        raise ImportError(
            "to_frame() needs the package pandas (Debian: python3-pandas)"
        ) from error
    return pandas


def _conditions(state: State) -> dict[str, Any]:
    return {
        "steel": state.steel,
        "temperature_C": state.celsius,
        "temperature_F": state.fahrenheit,
    }


def _trust(state: State) -> dict[str, Any]:
    """The warnings as the last parts of their distinct codes, such as "303 310"."""
    codes = dict.fromkeys(w.code.rpartition(".")[2] for w in state.warnings)
    return {"usable": state.usable, "warnings": " ".join(codes)}


def _tidy_rows(state: State) -> list[dict[str, Any]]:
    common = _conditions(state)
    rows: list[dict[str, Any]] = []
    for occurrence in state.occurrences:
        row: dict[str, Any] = {
            **common,
            "name": occurrence.name,
            "kind": occurrence.kind,
            "role": occurrence.role,
            "volume_percent": occurrence.volume_percent,
            "mass_percent": occurrence.mass_percent,
            "mole_percent": occurrence.mole_percent,
        }
        for symbol, value in occurrence.weight_percent.items():
            row[f"{symbol}_weight_percent"] = value
        rows.append({**row, **_trust(state)})
    return rows or [{**common, **_trust(state)}]


def _wide_row(state: State, kinds: list[str]) -> dict[str, Any]:
    row: dict[str, Any] = {
        **_conditions(state),
        "carbide_volume_percent": state.carbide_volume_percent,
        "carbon_activity": state.carbon_activity,
    }
    for kind in kinds:
        row[f"{kind}_volume_percent"] = state.volume_percent_of(kind)
    for symbol, value in state.matrix.weight_percent.items():
        row[f"matrix_{symbol}_weight_percent"] = value
    return {**row, **_trust(state)}


def sweep_to_frame(sweep: Sweep, *, wide: bool = False) -> pd.DataFrame:
    """Table of a sweep; units are in the column names.

    Parameters
    ----------
    sweep : Sweep
    wide : bool
        False: one row per temperature and occurrence. True: one row per temperature,
        one column per carbide kind and per element of the matrix.

    Returns
    -------
    pandas.DataFrame
        ``attrs`` holds the title and the hash of the parameter set. A state that is not
        usable keeps its row, with ``usable`` False and no numbers. ``usable`` True says
        that the calculation converged and was checked; it does not say that the
        parameter file is right here: read ``warnings``, codes such as ``"303 310"``.
    """
    pandas = _pandas()
    rows: list[dict[str, Any]] = []
    kinds = sweep.carbide_kinds
    for state in sweep:
        if wide:
            rows.append(_wide_row(state, kinds))
        else:
            rows.extend(_tidy_rows(state))
    frame = pandas.DataFrame(rows)
    if len(sweep) > 0:
        frame.attrs["parameters"] = sweep[0].parameters
        frame.attrs["parameters_hash"] = sweep[0].parameters_hash
    return frame


def state_columns(rows: list[tuple[State, dict[str, float]]]) -> pd.DataFrame:
    """One row per state: its conditions, the given numbers, and how far to trust it."""
    return _pandas().DataFrame(
        [{**_conditions(state), **numbers, **_trust(state)} for state, numbers in rows]
    )

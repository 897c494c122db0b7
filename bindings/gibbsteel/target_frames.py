"""Tables of searches for temperatures (pandas, imported on use)."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from ._core import (
    HardeningWindow,
    MatchingTemperature,
    PhaseChanges,
    State,
    TemperatureSearch,
)
from .optional import needed
from .quantities import matrix
from .trace import about_search, trace

if TYPE_CHECKING:
    import pandas as pd


def _names(names: list[str]) -> str:
    return " + ".join(names)


def _kinds(state: State) -> str:
    return _names([occurrence.kind for occurrence in state.occurrences])


def phase_changes_to_frame(found: PhaseChanges) -> pd.DataFrame:
    """One row per change; ``attrs`` as in `State.to_frame`, gaps, why it stopped."""
    rows = [
        {
            "steel": found.steel,
            "temperature_C": change.celsius,
            "temperature_F": change.fahrenheit,
            "bracket_K": change.bracket_width,
            "uncertainty_at_least_K": change.uncertainty_at_least,
            "appears": _names(change.appears),
            "disappears": _names(change.disappears),
            "invariant": change.invariant,
            "phases_below": _kinds(change.below),
            "phases_above": _kinds(change.above),
        }
        for change in found.changes
    ]
    frame: pd.DataFrame = needed("pandas", "to_frame()").DataFrame(rows)
    return trace(
        frame,
        about_search(found.low.parameters, found.low),
        searched_C=found.searched_celsius,
        gaps_C=[gap.celsius for gap in found.gaps],
        stopped=found.stopped,
    )


def matrix_carbon(state: State) -> float:
    """Of the matrix; NaN where there is none (molten)."""
    return matrix("C").value(state)


def _crossing_rows(search: TemperatureSearch) -> list[dict[str, Any]]:
    return [
        {
            "steel": search.steel,
            "quantity": search.quantity,
            "unit": search.unit,
            "target": search.target,
            "temperature_C": crossing.celsius,
            "temperature_F": crossing.fahrenheit,
            "kind": crossing.kind,
            "rising": crossing.rising,
            "value": crossing.value,
            "value_below": crossing.below,
            "value_above": crossing.above,
            "uncertainty_at_least_K": crossing.uncertainty_at_least,
            "slope": crossing.slope,
            "carbide_volume_percent": crossing.state.carbide_volume_percent,
            "matrix_C_weight_percent": matrix_carbon(crossing.state),
        }
        for crossing in search.crossings
    ]


def _search_frame(
    search: TemperatureSearch, rows: list[dict[str, Any]], origin: dict[str, str]
) -> pd.DataFrame:
    frame: pd.DataFrame = needed("pandas", "to_frame()").DataFrame(rows)
    columns = ("target", "value", "value_below", "value_above")
    return trace(
        frame,
        origin,
        units={
            **dict.fromkeys(columns, search.unit or "1"),
            "slope": f"{search.unit or '1'}/K",
        },
        searched_C=search.searched_celsius,
        status=search.status,
        text=search.text,
        warnings=[str(warning) for warning in search.warnings],
    )


def temperature_search_to_frame(search: TemperatureSearch) -> pd.DataFrame:
    """One row per crossing.

    ``value_below`` and ``value_above`` are those at both ends of the bracket: of a jump
    they differ. ``attrs`` as in `State.to_frame`, and status, sentence and warnings.
    """
    origin = about_search(search.parameters, search.low)
    return _search_frame(search, _crossing_rows(search), origin)


def matching_temperature_to_frame(match: MatchingTemperature) -> pd.DataFrame:
    """One row per crossing, the reference in front."""
    reference = {
        "reference": match.reference.steel,
        "reference_temperature_C": match.reference.celsius,
    }
    rows = [{**reference, **row} for row in _crossing_rows(match.search)]
    search = match.search
    origin = about_search(search.parameters, match.reference, search.low)
    frame = _search_frame(search, rows, origin)
    frame.attrs["warnings"] = [str(warning) for warning in match.warnings]
    return frame


def _set_end(degrees: float, rule: str) -> float:
    """NaN for an end that is only that of the search."""
    return math.nan if rule == "range" else degrees


def hardening_window_to_frame(window: HardeningWindow) -> pd.DataFrame:
    """One row per rule and stretch where it holds, and per window ("all rules").

    An end that no rule sets is NaN; ``attrs`` as in `State.to_frame`, the range that
    was searched, what is not known, and the remarks.
    """
    spans = [
        (rule.rule, rule.text, span) for rule in window.rules for span in rule.spans
    ]
    spans += [("all", "all rules", span) for span in window.spans]
    rows = [
        {
            "steel": window.steel,
            "rule": rule,
            "text": text,
            "low_C": _set_end(span.celsius[0], span.floor_rule),
            "high_C": _set_end(span.celsius[1], span.ceiling_rule),
            "low_F": _set_end(span.fahrenheit[0], span.floor_rule),
            "high_F": _set_end(span.fahrenheit[1], span.ceiling_rule),
            "floor_rule": span.floor_rule,
            "ceiling_rule": span.ceiling_rule,
        }
        for rule, text, span in spans
    ]
    frame: pd.DataFrame = needed("pandas", "to_frame()").DataFrame(rows)
    return trace(
        frame,
        about_search(window.parameters, window.at_floor),
        searched_C=window.searched_celsius,
        gaps_C=[gap.celsius for gap in window.gaps],
        status=window.status,
        text=window.text,
        warnings=[str(warning) for warning in window.warnings],
        remarks=window.remarks,
    )

"""Adds to the compiled classes what is for people: tables, pages, files."""

from __future__ import annotations

from ._core import (
    Calibration,
    Comparison,
    CompositionSearch,
    Design,
    Dissolution,
    Evidence,
    HardeningEstimates,
    HardeningWindow,
    MatchingTemperature,
    Matrix,
    MeltingRange,
    Occurrence,
    ParameterBand,
    ParameterSet,
    PhaseChanges,
    Report,
    ScreenTable,
    SectionMap,
    Sensitivities,
    ShortSoak,
    SoakGrid,
    SolveReport,
    State,
    Sweep,
    TemperatureSearch,
    ToleranceBand,
    TwinStudy,
)
from .arrays import array
from .calibration_files import calibration_to_frame, numbers_to_frame, save_layer
from .comparison_frames import comparison_to_csv, comparison_to_frame
from .evidence import evidence_to_frame
from .export import to_csv, to_json
from .frames import to_frame, to_xarray
from .hardening_frames import estimates_to_frame
from .html_inputs import parameter_set_html
from .html_results import (
    matrix_html,
    occurrence_html,
    printed_html,
    solve_report_html,
    state_html,
    sweep_html,
)
from .reports import report_html, save, state_report, sweep_report
from .short_soak_frames import short_soak_to_csv, short_soak_to_frame
from .warn import warn

METHODS: dict[type, dict[str, object]] = {
    State: {
        "_repr_html_": state_html,
        "report": state_report,
        "to_csv": to_csv,
        "to_frame": to_frame,
        "to_json": to_json,
        "warn": warn,
    },
    ShortSoak: {
        "report": state_report,
        "to_csv": short_soak_to_csv,
        "to_frame": short_soak_to_frame,
    },
    Sweep: {
        "_repr_html_": sweep_html,
        "array": array,
        "report": sweep_report,
        "to_csv": to_csv,
        "to_frame": to_frame,
        "to_json": to_json,
        "to_xarray": to_xarray,
        "warn": warn,
    },
    Calibration: {
        "numbers_to_frame": numbers_to_frame,
        "save_layer": save_layer,
        "to_frame": calibration_to_frame,
    },
    Comparison: {"to_csv": comparison_to_csv, "to_frame": comparison_to_frame},
    Evidence: {"to_frame": evidence_to_frame},
    HardeningEstimates: {"to_frame": estimates_to_frame},
    Report: {
        "_repr_html_": report_html,
        "html": property(report_html, doc="The page as HTML."),
        "save": save,
    },
    Occurrence: {"_repr_html_": occurrence_html},
    Matrix: {"_repr_html_": matrix_html},
    ParameterSet: {"_repr_html_": parameter_set_html},
    SolveReport: {"_repr_html_": solve_report_html},
}


# Shown by a notebook as `print` shows them.
AS_PRINTED: tuple[type, ...] = (
    Calibration,
    Comparison,
    CompositionSearch,
    Design,
    Dissolution,
    Evidence,
    HardeningEstimates,
    HardeningWindow,
    MatchingTemperature,
    MeltingRange,
    ParameterBand,
    PhaseChanges,
    ScreenTable,
    SectionMap,
    Sensitivities,
    ShortSoak,
    SoakGrid,
    TemperatureSearch,
    ToleranceBand,
    TwinStudy,
)


def attach() -> None:
    """Called once, on import of the package."""
    for compiled, methods in METHODS.items():
        for name, method in methods.items():
            setattr(compiled, name, method)
    for compiled in AS_PRINTED:
        setattr(compiled, "_repr_html_", printed_html)

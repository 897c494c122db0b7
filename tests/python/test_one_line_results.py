"""Every one-line result says what its numbers are: the long-hold limit, or another."""

import importlib.util
import sys
from pathlib import Path

import gibbsteel as gs
import pytest

KEPT = Path(__file__).parents[1] / "kept"
CONDITIONS = (
    "long-hold limit",
    "short-soak limit",
    "timed soak of ",
    "short soak with measured carbide",
    "NOT USABLE",
)
# No results of a soak: what goes in, and parts that are shown within a result.
OF_NO_SOAK = {
    "Calibration",
    "Constituent",
    "DataError",
    "DesignTarget",
    "Equilibrium",
    "EvidenceRow",
    "HardeningFamily",
    "InputError",
    "MakeableSteps",
    "MeasuredCarbide",
    "Measurement",
    "MinutesFor",
    "OutsideValidityWarning",
    "ParameterSet",
    "PhaseDerivatives",
    "PropertyEquations",
    "Quantity",
    "RecordedMeasurement",
    "SearchOptions",
    "SoakWarning",
    "SolveOptions",
    "Steel",
    "TradeIndices",
}


@pytest.fixture(scope="module")
def values():
    """One of every class that can be pickled, as tests/kept/ makes them."""
    sys.path.insert(0, str(KEPT))
    try:
        spec = importlib.util.spec_from_file_location("keep", KEPT / "keep.py")
        keep = importlib.util.module_from_spec(spec)
        spec.loader.exec_module(keep)
    finally:
        sys.path.remove(str(KEPT))
    folder = KEPT.parent / "parameter_file/good"
    return keep.all_values(folder / "uncertain.json")


def test_every_result_says_it(values):
    silent = {
        name: repr(value)
        for name, value in values.items()
        if type(value).__name__ not in OF_NO_SOAK
        and not any(condition in repr(value) for condition in CONDITIONS)
    }
    assert silent == {}
    kinds = {type(value).__name__ for value in values.values()}
    assert {"Sweep", "Comparison", "TwinStudy", "HardeningEstimates"} < kinds
    assert {"ToleranceBand", "SectionMap", "SoakGrid", "ScreenTable"} < kinds


def test_whole_lines(values):
    assert repr(values["sweep"]) == (
        "<punch heat 7, 2 soaks from 900 to 1000 C, long-hold limit>"
    )
    assert repr(values["comparison"]) == (
        "<comparison of 2 states, long-hold limit: punch heat 7 at 1120 C, punch heat "
        "7 at 1050 C>"
    )


@pytest.fixture(scope="module")
def bearing():
    return gs.Steel(C=1.0, Cr=1.45, Mn=0.35, Si=0.25, name="ball 4").soak(celsius=845)


def test_other_than_long_holds(bearing):
    timed = bearing.timed_soak(minutes=30).state
    short = bearing.short_soak_limit().state
    counted = bearing.with_measured_carbide({"M3C": 6.0}).state
    for state, said in (
        (bearing, "long-hold limit"),
        (timed, "timed soak of 30 min"),
        (short, "short-soak limit"),
        (counted, "short soak with measured carbide"),
    ):
        start = f"<ball 4 at 845 C (1553 F), {said}: "
        assert repr(state).startswith(start)
        hardened = state.hardening()
        quench = "ball 4 quenched from 845 C (1553 F) to 20 C (68 F), "
        assert repr(hardened).startswith(f"<{quench}{said}: martensite start ")
        first = " ".join(str(hardened).split("\n", 4)[:4])
        assert quench in first and f"{said}, estimates" in " ".join(first.split())
    assert repr(gs.compare([bearing, timed])) == (
        "<comparison of 2 states: ball 4 at 845 C (long-hold limit), ball 4 at 845 C "
        "(timed soak of 30 min)>"
    )


def test_printed_estimates_can_be_traced(bearing):
    hardened = bearing.hardening()
    text = str(hardened)
    assert "\nanalysis, wt%: 1C 1.45Cr 0.35Mn 0.25Si, balance Fe\n" in text
    assert f"\nparameters: {bearing.parameters}" in text
    assert bearing.parameters_hash in text
    assert hardened.analysis == bearing.analysis
    assert hardened.parameters == bearing.parameters
    assert hardened.parameters_hash == bearing.parameters_hash

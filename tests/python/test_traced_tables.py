"""Every table of the face can be traced: origin, limit, caution, units in attrs."""

import gibbsteel as gs
import numpy as np
import pytest

pandas = pytest.importorskip("pandas")

CHROMIUM = {"C": 1.0, "Cr": 5.0}


@pytest.fixture(scope="module")
def steel():
    return gs.Steel(CHROMIUM, name="die")


def calibration():
    heat = gs.Steel({"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8}, name="D2")
    carbide = gs.quantities.carbide_volume_percent()
    counted = gs.measurement(heat, carbide, 12.5, 1.0, celsius=1030)
    return gs.calibrate([counted], {"/phases/M7C3/energy/2/terms/1": 3000.0})


def timed():
    bar = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    return bar.soak(celsius=845).timed_soak(30)


def grid(steel):
    return steel.grid(celsius=[900, 1000], C=[0.9, 1.0])


# Class -> a result of it. A class with to_frame() that is missing here fails.
MADE = {
    "State": lambda s: s.soak(celsius=1000),
    "Sweep": lambda s: s.sweep(celsius=[900, 1000]),
    "ShortSoak": lambda s: timed(),
    "HardeningEstimates": lambda s: s.soak(celsius=1000).hardening(),
    "Comparison": lambda s: gs.compare([s.soak(celsius=1000)]),
    "SectionMap": lambda s: s.section_map(C=(0.5, 1.0), celsius=(700, 900)),
    "Sensitivities": lambda s: s.sensitivities(celsius=1000),
    "TemperatureSearch": lambda s: s.temperature_for(matrix_carbon=0.6),
    "MatchingTemperature": lambda s: gs.matching_temperature(
        reference=s.soak(celsius=1000), steel=s.changed(C=1.1)
    ),
    "PhaseChanges": lambda s: s.phase_changes(celsius=(700, 900)),
    "HardeningWindow": lambda s: s.hardening_window(celsius=(800, 900)),
    "ToleranceBand": lambda s: s.tolerance_band(
        celsius=1000, standard_deviations={"C": 0.05}, samples=16
    ),
    "ParameterBand": lambda s: s.parameter_band(celsius=1000),
    "SoakGrid": grid,
    "ScreenTable": lambda s: gs.screen([[0.8], [1.0]], ["C"], celsius=700),
    "Calibration": lambda s: calibration(),
    "Evidence": lambda s: s.evidence(celsius=1000, most_soaks=1),
}
# Have no volumes, so no basis.
WITHOUT_BASIS = {"SectionMap", "Calibration", "Evidence", "HardeningEstimates"}
# Know the title of their parameter set only.
WITHOUT_HASH = {"Calibration", "Evidence"}


def test_no_class_with_a_table_is_left_out():
    classes = {n for n in gs.__all__ if hasattr(getattr(gs, n), "to_frame")}
    assert classes == set(MADE)


def check_origin(attrs, name):
    parameters = gs.default_parameters()
    assert attrs["library"] == f"gibbsteel {gs.__version__}"
    assert attrs["parameters"] == parameters.title
    if name not in WITHOUT_HASH:
        assert attrs["parameters_hash"] == parameters.content_hash
    limit = "timed soak of 30 min, matrix" if name == "ShortSoak" else "long-hold limit"
    assert attrs["limit"].startswith(limit)
    assert "coupons" in attrs["caution"]
    if name in WITHOUT_BASIS:
        assert "basis" not in attrs
    else:
        assert attrs["basis"].startswith("volumes at room temperature")


def check_units(frame):
    """Of every column of numbers, unless a column or level of the index says it."""
    units = frame.attrs["units"]
    assert set(units) <= set(frame.columns)
    if "unit" in frame.columns or "unit" in frame.index.names:
        return
    numbers = [name for name in frame if frame[name].dtype == np.float64]
    assert set(numbers) <= set(units)


@pytest.mark.parametrize("name", MADE)
def test_a_table_can_be_traced(steel, name):
    result = MADE[name](steel)
    assert type(result).__name__ == name
    frame = result.to_frame()
    assert len(frame) > 0
    check_origin(frame.attrs, name)
    check_units(frame)


def test_other_shapes_of_a_table(steel):
    sweep, cells = MADE["Sweep"](steel), grid(steel)
    for frame in (sweep.to_frame(wide=True), cells.to_frame(wide=False)):
        check_origin(frame.attrs, "")
        check_units(frame)
    fit = calibration()
    frame = fit.numbers_to_frame()
    check_origin(frame.attrs, "Calibration")
    assert frame.attrs["calibrated_hash"] == fit.parameters.content_hash


def test_xarrays(steel):
    pytest.importorskip("xarray")
    for result in (MADE["Sweep"](steel), grid(steel)):
        check_origin(result.to_xarray().attrs, "")
    assert grid(steel).to_xarray().attrs["steel"] == "die"


def test_units_of_what_only_a_label_names(steel):
    search = MADE["TemperatureSearch"](steel).to_frame().attrs["units"]
    assert (search["value"], search["temperature_C"]) == ("wt%", "degC")
    changes = MADE["PhaseChanges"](steel).to_frame().attrs["units"]
    assert changes["bracket_K"] == "K"
    section = MADE["SectionMap"](steel).to_frame().attrs["units"]
    assert section == {"C [wt%]": "wt%", "temperature [C]": "degC"}
    slopes = MADE["Sensitivities"](steel).to_frame().attrs["units"]
    assert slopes["per_K"] == "unit of the row per K"
    assert slopes["per_wt%_C"] == "unit of the row per wt%"
    hrc = gs.quantities.hardness_hrc()
    table = gs.screen([[0.8]], ["C"], celsius=800, quantities=[hrc]).to_frame()
    assert table.attrs["units"]["as_quenched_hardness_HRC"] == "HRC"
    compared = gs.compare([steel.soak(celsius=1000)], quantities=[hrc]).to_frame()
    assert compared.attrs["units"]["as_quenched_hardness_HRC"] == "HRC"
    assert compared.attrs["units"]["carbon_activity"] == "1"


def test_states_that_differ_are_all_told(steel, first_edition):
    old = gs.Steel(CHROMIUM, parameters=first_edition)
    pair = [old.soak(celsius=1000), steel.soak(celsius=1000, at_soak_temperature=True)]
    attrs = gs.compare(pair).to_frame().attrs
    hashes = [first_edition.content_hash, gs.default_parameters().content_hash]
    assert attrs["parameters_hash"].split(" | ") == hashes
    assert attrs["basis"].split(" | ") == [
        "volumes at room temperature, austenite counted as untempered martensite",
        "volumes at soak temperature",
    ]
    assert attrs["limit"] == "long-hold limit (true equilibrium)"


def test_what_found_nothing_is_traced_too(steel):
    window = steel.hardening_window(least_hardness=70)
    assert window.celsius is None and not window.at_floor.usable
    check_origin(window.to_frame().attrs, "")
    missed = steel.temperature_for(matrix_carbon=2.9)
    assert missed.crossings == []
    check_origin(missed.to_frame().attrs, "")
    stopped = steel.grid(celsius=[900], C=[1.0], progress=lambda done: False)
    if stopped.not_done:
        attrs = stopped.to_frame().attrs
        assert attrs["parameters_hash"] == gs.default_parameters().content_hash

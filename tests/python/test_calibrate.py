"""Calibrations: equal to the library's own soaks, pickles, tables, whole errors.

The measurements are made up from a parameter set that was shifted on purpose.
"""

import json
import pickle

import gibbsteel as gs
import numpy as np
import pytest
from gibbsteel import _core, quantities

PLACE = "/phases/M6C/energy/2/terms/1"
OTHER = "/phases/austenite/energy/56/terms/1"
HEATS = {
    "M2": {"C": 0.85, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9},
    "T1": {"C": 0.75, "Cr": 4.1, "W": 18.0, "V": 1.1},
}


def shifted(place, by):
    """The shipped set with one number moved."""
    text = json.loads(gs.write_parameters(gs.default_parameters()))
    *path, last = place.strip("/").split("/")
    node = text
    for step in path:
        node = node[int(step)] if isinstance(node, list) else node[step]
    node[last] += by
    return _core.parse_parameters(json.dumps(text), "shifted.json")


@pytest.fixture(scope="module")
def measurements():
    truth = shifted(PLACE, -3000.0)
    asked = [quantities.matrix("W"), quantities.volume_percent("M6C")]
    made = []
    for name, percents in HEATS.items():
        for celsius in (1100, 1200):
            state = gs.Steel(percents, parameters=truth).soak(celsius=celsius)
            for quantity in asked:
                value = quantity.value(state)
                made.append(
                    gs.measurement(
                        gs.Steel(percents, name=name),
                        quantity,
                        value,
                        0.01 * value,
                        celsius=celsius,
                        record=f"{name}-{celsius}",
                    )
                )
    return made


@pytest.fixture(scope="module")
def fit(measurements):
    return gs.calibrate(measurements, {PLACE: 5000.0, OTHER: 200.0})


def test_a_shift_is_found_again(fit):
    assert fit.status == "converged" and fit.usable and fit.reason == ""
    number, other = fit.numbers
    assert (number.place, number.unit, number.seen) == (PLACE, "J/mol", True)
    assert number.after - number.before == pytest.approx(-3000.0, abs=300.0)
    assert number.ratio == number.deviation / 5000.0
    assert fit.covariance.shape == (2, 2)
    assert np.sqrt(np.diag(fit.covariance)) == pytest.approx(
        [number.deviation, other.deviation]
    )
    assert fit.rms_after() < 0.1 * fit.rms_before()
    assert [s.steel for s in fit.steels] == ["M2", "T1"]
    assert all(s.predicted < s.before for s in fit.steels)
    assert len(fit.directions) == 2


def test_the_layer_saved_and_loaded_reproduces_the_fit(fit, tmp_path):
    file = tmp_path / "fitted.json"
    fit.save_layer(file)
    loaded = gs.load_parameters(file, on_top_of=gs.default_parameters())
    assert gs.content_hash(loaded) == gs.content_hash(fit.parameters)
    outcome = fit.measurements[0]
    state = gs.Steel(HEATS["M2"], parameters=loaded).soak(celsius=outcome.celsius)
    assert quantities.matrix("W").value(state) == outcome.after
    term = json.loads(fit.layer)["phases"]["M6C"]["energy"][0]
    # The shipped file has a source "calibration" of its own.
    assert (term["kind"], term["source"]) == ("estimated", "calibration 2")
    assert "prior +-5000 J/mol; felt by M2 (4), T1 (4)" in term["note"]
    band = gs.Steel(HEATS["M2"], parameters=loaded).parameter_band(celsius=1150)
    assert band["C in the matrix"].first_order.standard_deviation > 0.0


def test_a_quantity_made_in_python_is_fitted_to():
    def ratio(state):
        return state.matrix.weight_percent["W"] / state.matrix.weight_percent["Mo"]

    heat = gs.Steel(HEATS["M2"], name="M2")
    before = ratio(heat.soak(celsius=1200))
    asked = gs.measurement(heat, ratio, 0.9 * before, 0.01 * before, celsius=1200)
    fit = gs.calibrate([asked], {PLACE: 5000.0})
    assert fit.measurements[0].quantity == "ratio"
    assert abs(fit.rms_after()) < 0.2 * fit.rms_before()


def test_composition_of_a_phase_and_of_all_carbides():
    state = gs.Steel(HEATS["M2"]).soak(celsius=1200)
    in_m6c = quantities.in_phase("M6C", "Fe")
    assert in_m6c.value(state) == state["M6C"].weight_percent["Fe"]
    assert np.isnan(quantities.in_phase("M23C6", "Fe").value(state))
    carbides = state.carbides.values()
    mass = sum(c.mass_percent for c in carbides)
    mean = sum(c.mass_percent * c.weight_percent["Fe"] for c in carbides) / mass
    in_all = quantities.in_carbides("Fe")
    assert in_all.value(state) == pytest.approx(mean, rel=1e-12)
    assert in_m6c.label == "Fe in M6C [wt%]"
    assert in_all.label == "Fe in the carbides [wt%]"
    steps = gs.Steel(HEATS["M2"]).sensitivities(celsius=1200)
    for quantity in (in_m6c, in_all):
        low, high = (
            quantity.value(gs.Steel(HEATS["M2"]).soak(celsius=1200 + t))
            for t in (-0.1, 0.1)
        )
        slope = quantity.slope(steps.state, steps["temperature"])
        assert slope == pytest.approx((high - low) / 0.2, rel=1e-4)
        assert pickle.loads(pickle.dumps(quantity)).label == quantity.label


def test_text_tables_pickle_and_read_only(fit, measurements):
    assert repr(fit).startswith(
        "<calibration of 2 numbers on 8 of 8 measurements: converged, rms miss "
    )
    assert "M6C, energy on (Fe, W, Fe, C), power 1" in str(fit)
    assert "long-hold limit" in str(fit).lower()
    copy = pickle.loads(pickle.dumps(fit))
    assert str(copy) == str(fit) and copy.layer == fit.layer
    assert copy.numbers == fit.numbers and copy.measurements == fit.measurements
    assert copy.steels == fit.steels and copy.directions == fit.directions
    again = pickle.loads(pickle.dumps(measurements))
    assert repr(again) == repr(measurements)
    assert gs.calibrate(again, {PLACE: 5000.0, OTHER: 200.0}).layer == fit.layer
    with pytest.raises(AttributeError):
        fit.layer = ""
    pytest.importorskip("pandas")
    frame = fit.to_frame()
    assert list(frame["residual_after"]) == [m.residual_after for m in fit.measurements]
    assert list(fit.numbers_to_frame()["after"]) == [n.after for n in fit.numbers]


def test_serial_and_parallel_are_the_same(fit, measurements):
    numbers = {PLACE: 5000.0, OTHER: 200.0}
    assert gs.calibrate(measurements, numbers, threads=1).layer == fit.layer
    assert gs.calibrate(measurements, numbers, threads=3).layer == fit.layer


def test_another_start_and_starts_that_are_refused(fit, measurements):
    numbers = {n.place: n.prior_deviation for n in fit.numbers}
    first = fit.numbers[0]
    start = {first.place: first.after + 500.0}
    moved = gs.calibrate(measurements, numbers, start=start)
    assert moved.status == "converged"
    assert moved.misfit_before == fit.misfit_before
    for here, there in zip(moved.numbers, fit.numbers, strict=True):
        assert here.before == there.before
        assert here.after == pytest.approx(there.after, abs=0.1 * there.deviation)
    with pytest.raises(gs.InputError) as error:
        gs.calibrate(
            measurements, numbers, start={"/phases/none": 1.0, first.place: "low"}
        )
    assert str(error.value) == (
        "[gibbsteel.input.300] start, /phases/none: is not among the numbers; start "
        "only what is free\n"
        f"[gibbsteel.input.300] start, {first.place}: is 'low'; give a number, in the "
        "unit of the number"
    )


def test_progress_and_stopping(measurements):
    seen = []
    stopped = gs.calibrate(
        measurements, {PLACE: 5000.0}, progress=lambda n: seen.append(n) or n < 2
    )
    assert seen == [1, 2] and stopped.status == "cancelled"
    assert stopped.parameters is None and stopped.covariance.shape == (0, 0)
    with pytest.raises(gs.InputError) as error:
        stopped.save_layer("nowhere.json")
    assert str(error.value) == (
        "[gibbsteel.input.303] layer: the calibration has no layer: stopped by the "
        "caller; mend the reason and calibrate again"
    )


def test_priors_from_the_file(fit, measurements):
    second = gs.calibrate(measurements, [PLACE, OTHER], on=fit.parameters)
    assert [n.prior_deviation for n in second.numbers] == [
        n.deviation for n in fit.numbers
    ]
    assert "calibration 2" in second.parameters.sources


@pytest.mark.parametrize(
    "changes, message",
    [
        (
            {"numbers": {PLACE: "wide"}},
            f"[gibbsteel.input.300] numbers, {PLACE}: has a prior standard deviation "
            "of 'wide'; give a number above 0, in the unit of the number",
        ),
        (
            {"loss": "absolute"},
            "[gibbsteel.input.302] loss: is 'absolute'; give 'squares', 'huber' or "
            "'cauchy'",
        ),
        (
            {"measurements": []},
            "[gibbsteel.input.301] measurements: there is none to fit to; give one "
            "that is not held back",
        ),
        (
            {"measurements": [0.5]},
            "[gibbsteel.input.220] measurements: is float, not Measurement; make each "
            "with gs.measurement(...)",
        ),
        (
            {"numbers": {}, "measurements": []},
            "[gibbsteel.input.301] measurements: there is none; give what was measured",
        ),
    ],
)
def test_wrong_arguments(measurements, changes, message):
    given = {"measurements": measurements, "numbers": {PLACE: 5000.0}, **changes}
    with pytest.raises(gs.InputError) as error:
        gs.calibrate(given.pop("measurements"), given.pop("numbers"), **given)
    assert str(error.value) == message


def test_a_measurement_needs_numbers():
    heat = gs.Steel(HEATS["M2"], name="M2")
    with pytest.raises(gs.InputError) as error:
        gs.measurement(heat, quantities.matrix("C"), 0.5, "5 %", celsius=1200)
    assert str(error.value) == (
        "[gibbsteel.input.301] uncertainty: is '5 %'; give a number in the unit of the "
        "quantity"
    )


def test_a_driving_force_brings_an_absent_phase_back(first_edition):
    """Annealed T1 holds M23C6, which the first edition does not form (T1-A-phases)."""
    percents = {**HEATS["T1"], "Mo": 0.4, "Mn": 0.3, "Si": 0.3}
    heat = gs.Steel(percents, name="T1", parameters=first_edition)
    force = quantities.driving_force("M23C6")
    amount = quantities.volume_percent("M23C6")
    state = heat.soak(celsius=750)
    assert force.value(state) == state.driving_force["M23C6"] < 0.0
    assert force.label == "driving force of M23C6 [J/mol of atoms]"
    assert pickle.loads(pickle.dumps(force)).label == force.label
    without = heat.soak(celsius=750, suppressed=["M23C6"])
    assert np.isnan(force.value(without))
    number = {"/phases/M23C6/energy/19/terms/1": 40000.0}

    def fitted(quantity, value, uncertainty):
        seen = gs.measurement(heat, quantity, value, uncertainty, celsius=750)
        return gs.calibrate([seen], number, on=first_edition)

    # An amount has no slope while the phase is absent: nothing moves.
    assert not fitted(amount, 3.0, 0.5).numbers[0].seen
    fit = fitted(force, 0.0, 10.0)
    again = gs.Steel(heat.analysis.given, parameters=fit.parameters).soak(celsius=750)
    assert force.value(again) > -30.0

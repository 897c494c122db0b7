"""Steel.matrix_twin and Steel.twin_study."""

import pickle

import gibbsteel as gs
import pytest


def test_twin_holds_the_matrix_and_no_carbide(high_speed):
    state = high_speed.soak(celsius=1200)
    twin = high_speed.matrix_twin(celsius=1200, rounding=False)
    assert isinstance(twin, gs.Steel)
    assert twin.name == "matrix of punch heat 12 at 1200 C"
    for symbol, percent in state.matrix.weight_percent.items():
        assert twin.analysis.modelled[symbol] == pytest.approx(percent, rel=1e-9)
    assert twin.soak(celsius=1200).carbide_volume_percent < 1e-6
    assert high_speed.matrix_twin(fahrenheit=2192, rounding=False).analysis.given[
        "C"
    ] == pytest.approx(twin.analysis.given["C"], rel=1e-9)
    assert high_speed.matrix_twin(state=state, rounding=False) == twin


def test_rounding(high_speed):
    rounded = high_speed.matrix_twin(celsius=1200).analysis.given
    coarse = high_speed.matrix_twin(
        celsius=1200, rounding=gs.MakeableSteps({"C": 0.05}, 0.5)
    ).analysis.given
    assert rounded["C"] == pytest.approx(round(rounded["C"], 2), abs=1e-12)
    assert coarse["Cr"] == 4.0
    assert all(value * 2 == round(value * 2) for k, value in coarse.items() if k != "C")
    with pytest.raises(gs.InputError) as error:
        high_speed.matrix_twin(celsius=1200, rounding=gs.MakeableSteps({"C": 0.0}))
    assert str(error.value) == (
        "[gibbsteel.input.261] steps, C: is 0; give a step above 0, at most 10 wt%"
    )


def test_steps_are_a_value():
    steps = gs.MakeableSteps({"C": 0.02}, 0.1)
    assert pickle.loads(pickle.dumps(steps)) == steps != gs.MakeableSteps()
    assert repr(steps) == "<MakeableSteps {'C': 0.02}, others 0.1 wt%>"
    assert repr(gs.MakeableSteps.none()) == "<MakeableSteps: none>"
    assert gs.MakeableSteps() == gs.MakeableSteps({"C": 0.01}, 0.05)


def test_study(high_speed):
    study = high_speed.twin_study(celsius=1200, others_celsius=[1000, 1100])
    assert [round(state.celsius) for state in study.others] == [1000, 1100]
    left = [state.carbide_volume_percent for state in study.others]
    assert left[0] > left[1] > study.same.carbide_volume_percent
    assert study.twin == high_speed.matrix_twin(celsius=1200)
    assert study.exact == study.reference.matrix.weight_percent
    copy = pickle.loads(pickle.dumps(study))
    assert str(copy) == str(study)
    assert copy.twin == study.twin
    assert repr(study).startswith("<matrix of punch heat 12 at 1200 C: ")


def test_study_in_kelvin(high_speed):
    study = high_speed.twin_study(kelvin=1473.15)
    assert study.twin == high_speed.matrix_twin(celsius=1200)
    with pytest.raises(gs.InputError) as error:
        high_speed.twin_study(kelvin=1473.15, celsius=1200)
    assert str(error.value) == (
        "[gibbsteel.input.211] temperature: got celsius= and kelvin=; give exactly one "
        "of celsius=, fahrenheit= and kelvin="
    )


def test_temperature_without_a_unit(high_speed):
    with pytest.raises(gs.InputError) as error:
        high_speed.matrix_twin(1200)
    assert str(error.value) == (
        "[gibbsteel.input.211] temperature: got 1200 without a unit; give the unit: "
        "matrix_twin(celsius=1200)"
    )

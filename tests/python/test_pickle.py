"""Every value type survives pickling."""

import pickle
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context
from operator import methodcaller
from pathlib import Path

import gibbsteel as gs
import pytest


def again(value):
    return pickle.loads(pickle.dumps(value))


def test_steel(punch):
    copy = again(punch)
    assert copy == punch
    assert copy.soak(celsius=1100).gibbs_energy == punch.soak(celsius=1100).gibbs_energy


def test_state_and_sweep(high_speed, state):
    copy = again(state)
    assert str(copy) == str(state)
    assert copy.occurrences == state.occurrences
    assert copy.matrix == state.matrix
    assert copy.analysis == state.analysis
    assert copy.warnings == state.warnings
    assert copy.kinds == state.kinds
    sweep = high_speed.sweep(celsius=[1000, 1100])
    assert str(again(sweep)) == str(sweep)


def test_small_values(state):
    assert again(state["MC"]) == state["MC"]
    assert str(again(state.solve_report)) == str(state.solve_report)
    options = gs.SolveOptions(starts_per_phase=12)
    assert repr(again(options)) == repr(options)
    assert again(options) == options != gs.SolveOptions()


def test_parameters():
    parameters = gs.default_parameters()
    assert again(parameters) == parameters
    assert again(parameters).content_hash == parameters.content_hash
    assert again(parameters) is again(parameters)


def test_a_layered_set_keeps_its_content():
    folder = Path(__file__).parents[1] / "parameter_file"
    below = gs.load_parameters(folder / "good" / "small.json")
    layered = gs.load_parameters(folder / "layers" / "titanium.json", on_top_of=below)
    assert layered.files == ["small.json", "titanium.json"]
    assert "Ti" in layered.elements and "Ti" not in below.elements
    assert again(layered) == layered != below
    assert again(layered).content_hash == layered.content_hash


def test_another_process_gets_the_same_numbers(punch):
    """As a pool of workers does it: the steel goes over, the state comes back."""
    soak = methodcaller("soak", celsius=1100)
    with ProcessPoolExecutor(1, mp_context=get_context("spawn")) as pool:
        state = pool.submit(soak, punch).result(timeout=300)
    assert state.occurrences == soak(punch).occurrences
    assert state.gibbs_energy == soak(punch).gibbs_energy


def test_low_level_values():
    result = gs.minimize(["Fe", "C"], [0.97, 0.03], 1100.0)
    copy = again(result)
    assert copy.chemical_potential == result.chemical_potential
    assert copy.gibbs_energy == result.gibbs_energy
    assert repr(copy) == repr(result)
    assert [p["phase"] for p in copy.present] == [p["phase"] for p in result.present]
    model = gs.default_parameters().phase_model("austenite", elements=["Fe", "C"])
    y = [1.0, 0.04, 0.96]
    d = model.derivatives(kelvin=1200.0, site_fractions=y)
    assert (again(d).dy2 == d.dy2).all()
    assert repr(again(model.constituents[1])) == repr(model.constituents[1])


def test_values_compare_with_anything(state):
    assert state["MC"] != 3
    assert state.analysis != "steel"
    assert gs.default_parameters() != None  # noqa: E711


def test_errors():
    with pytest.raises(gs.InputError) as error:
        gs.Steel({"C": -1.0})
    copy = again(error.value)
    assert str(copy) == str(error.value)
    assert copy.problems == error.value.problems

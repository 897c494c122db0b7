"""Every value type survives pickling."""

import pickle

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
    sweep = high_speed.sweep(celsius=[1000, 1100])
    assert str(again(sweep)) == str(sweep)


def test_small_values(state):
    assert again(state["MC"]) == state["MC"]
    assert str(again(state.solve_report)) == str(state.solve_report)
    options = gs.SolveOptions(starts_per_phase=12)
    assert repr(again(options)) == repr(options)


def test_parameters():
    parameters = gs.default_parameters()
    assert again(parameters) == parameters
    assert again(parameters).content_hash == parameters.content_hash


def test_errors():
    with pytest.raises(gs.InputError) as error:
        gs.Steel({"C": -1.0})
    copy = again(error.value)
    assert str(copy) == str(error.value)
    assert copy.problems == error.value.problems

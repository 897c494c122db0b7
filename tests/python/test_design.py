"""gs.design, gs.target, gs.matrix_targets."""

import pickle

import gibbsteel as gs
import pytest
from gibbsteel import quantities

VARY = {"C": (0.3, 0.9), "Mo": (1.0, 5.0)}


@pytest.fixture(scope="module")
def recovered(punch):
    """The start differs from the heat whose numbers are the targets."""
    state = punch.soak(celsius=1120)
    targets = gs.matrix_targets(state, ["C", "Mo"])
    return gs.design(punch.changed(C=0.7, Mo=4.0), vary=VARY, targets=targets)


def test_a_known_steel_is_recovered(recovered):
    assert recovered.status == "met"
    assert recovered.weight_percent == pytest.approx({"C": 0.55, "Mo": 2.75}, rel=1e-3)
    assert isinstance(recovered.steel, gs.Steel)
    state = recovered.steel.soak(celsius=1120)
    for outcome, symbol in zip(recovered.targets, ["C", "Mo"], strict=True):
        assert outcome.met and outcome.value == state.matrix.weight_percent[symbol]
    assert recovered.at_bound == []


def test_limits_and_rounding(punch):
    design = gs.design(
        punch,
        vary={"C": (0.3, 1.0), "V": (0.5, 3.0)},
        targets=[
            gs.target(quantities.carbide_volume_percent(), at_most=3, celsius=1100),
            gs.target(quantities.matrix("C"), at_least=0.5, celsius=1100),
        ],
        rounding=True,
    )
    assert design.status == "met"
    assert design.states[0].carbide_volume_percent <= 3.0
    assert design.states[0].matrix.weight_percent["C"] >= 0.5
    assert design.weight_percent["C"] == pytest.approx(
        round(design.weight_percent["C"], 2), abs=1e-12
    )


def test_targets_are_values(punch, recovered):
    wish = gs.target(quantities.matrix("C"), at_least=0.5, celsius=1120)
    copy = pickle.loads(pickle.dumps(wish))
    assert repr(copy) == repr(wish)
    assert (copy.sense, copy.wanted, copy.tolerance) == ("at least", 0.5, 0.0)
    assert gs.target(quantities.matrix("C"), equal=0.5, celsius=1120).tolerance == 0.005
    state = punch.soak(celsius=1120)
    assert len(gs.matrix_targets(state)) == 5
    cooler = gs.matrix_targets(state, ["C"], celsius=1000)[0]
    assert cooler.kelvin == pytest.approx(1273.15)
    copy = pickle.loads(pickle.dumps(recovered))
    assert str(copy) == str(recovered)
    assert copy.steel == recovered.steel
    assert copy.targets == recovered.targets
    assert repr(recovered).startswith(
        "<design from punch heat 7, 0.7 C, 4 Mo, long-hold limit: met"
    )


def test_a_limit_that_is_missed_is_not_met():
    steel = gs.Steel(C=1.0, Cr=5, V=2, Si=0.4, Mn=0.4, Mo=1.9, name="x")
    design = gs.design(
        steel,
        vary={"Mo": (1, 1.9)},
        targets=[
            gs.target(quantities.retained_austenite(), at_most=15, celsius=1040),
            gs.target(quantities.hardness_hrc(), at_least=63.5, celsius=1040),
        ],
    )
    assert design.status == "infeasible"
    austenite, hardness = design.targets
    assert austenite.met and not hardness.met
    assert -0.64 < hardness.miss < 0 and hardness.tolerance == 0
    assert "as-quenched hardness, HRC" in str(design) and "NOT MET" in str(design)
    with pytest.raises(gs.InputError) as error:
        limit = gs.target(quantities.matrix("C"), at_most=-1, celsius=1040)
        gs.design(steel, vary={"Mo": (1, 1.9)}, targets=[limit])
    assert str(error.value) == (
        "[gibbsteel.input.340] targets, C in the matrix: is -1, which 'C in the "
        "matrix' can never be; give 0 to 100 wt%"
    )


def test_it_is_stopped_by_the_caller(punch):
    told = []

    def stop(done):
        told.append(done)
        return done < 3

    targets = [
        gs.target(quantities.matrix("C"), equal=0.45, celsius=1120),
        gs.target(quantities.matrix("Mo"), equal=2.0, celsius=1120),
    ]
    design = gs.design(punch, vary=VARY, targets=targets, progress=stop)
    assert told == [1, 2, 3]
    assert design.status == "stopped" and design.soaks == 4
    assert design.text.startswith(
        "stopped by the caller after 4 soaks; the best so far, "
    )
    copy = pickle.loads(pickle.dumps(design))
    assert str(copy) == str(design)
    # Many compositions keep to a limit; the nearest one was not found.
    limit = gs.target(quantities.matrix("C"), at_most=5, celsius=1120)
    at_once = gs.design(punch, vary=VARY, targets=limit, progress=lambda done: False)
    assert at_once.status == "stopped" and at_once.targets[0].met


def test_errors(punch):
    carbon = quantities.matrix("C")
    with pytest.raises(gs.InputError) as error:
        gs.target(carbon, equal=0.5, at_most=0.6, celsius=1120)
    assert str(error.value) == (
        "[gibbsteel.input.269] targets, C in the matrix: got equal and at most; give "
        "exactly one of equal=, at_least= and at_most="
    )
    with pytest.raises(gs.InputError) as error:
        gs.design(punch, vary={"C": 0.5}, targets=[])
    assert str(error.value) == (
        "[gibbsteel.input.269] elements, C: is 0.5; give the lowest and the highest "
        "weight percent, for instance (0.3, 0.9)"
    )
    with pytest.raises(gs.InputError) as error:
        gs.design(punch, vary={}, targets=[])
    assert str(error.value) == (
        "[gibbsteel.input.269] elements: is empty; give at least one with its bounds\n"
        "[gibbsteel.input.269] targets: is empty; give at least one"
    )

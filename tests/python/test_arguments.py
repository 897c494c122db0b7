"""Things of another kind than is asked for: one coded error, or taken as meant."""

import gibbsteel as gs
import pytest


def message(call):
    with pytest.raises(gs.InputError) as error:
        call()
    return str(error.value)


def test_a_list_where_one_kind_belongs(punch):
    assert message(lambda: punch.dissolution_temperature(["M6C", "MC"])) == (
        "[gibbsteel.input.220] kind: is list, not str; give one kind, and call it "
        "once for each"
    )


def test_a_steel_where_a_soak_belongs(punch):
    assert message(lambda: gs.matching_temperature(reference=punch, steel=punch)) == (
        "[gibbsteel.input.220] reference: is Steel, not State; give a soak of it: "
        "steel.soak(celsius=1120)"
    )
    soak = punch.soak(celsius=1120)
    assert message(lambda: gs.matching_temperature(reference=soak, steel=soak)) == (
        "[gibbsteel.input.220] steel: is State, not Steel; give the steel that is to "
        "match the reference"
    )


def test_a_name_where_a_parameter_set_belongs(punch):
    text = (
        "[gibbsteel.input.220] parameters: is str, not ParameterSet; give what "
        'load_parameters or default_parameters("liquid") return'
    )
    assert message(lambda: gs.Steel(C=0.8, parameters="liquid")) == text
    assert message(lambda: punch.with_parameters("liquid")) == text


def test_what_is_no_target(punch):
    vary = {"C": (0.3, 1.0)}
    assert message(lambda: gs.design(punch, vary=vary, targets=[0.5])) == (
        "[gibbsteel.input.220] targets: is float, not DesignTarget; make each with "
        "gs.target(...)"
    )


def test_one_is_as_good_as_a_list_of_one(punch):
    soak = punch.soak(celsius=1120)
    assert str(gs.compare(soak)) == str(gs.compare([soak]))
    carbon = gs.target(gs.quantities.matrix("C"), equal=0.45, celsius=1100)
    vary = {"C": (0.3, 1.0)}
    one = gs.design(punch, vary=vary, targets=carbon)
    assert str(one) == str(gs.design(punch, vary=vary, targets=[carbon]))


def test_a_short_soak_serves_as_reference_and_hardens():
    bearing = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    short = bearing.soak(celsius=845).with_measured_carbide({"M3C": 6.0})
    assert short.hardening() == short.state.hardening()
    by_short = gs.matching_temperature(reference=short, steel=bearing)
    by_state = gs.matching_temperature(reference=short.state, steel=bearing)
    assert str(by_short) == str(by_state)


def test_a_twin_is_not_made_from_ferrite(punch):
    assert message(lambda: punch.matrix_twin(celsius=700)) == (
        "[gibbsteel.input.260] state: has a matrix without austenite; take a "
        "temperature at which the steel is austenitized: the matrix of an annealed "
        "steel holds next to no carbon"
    )


def test_bearing_steel_is_warned_of_short_soaks():
    bearing = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    soak = bearing.soak(celsius=845)
    code = "gibbsteel.warning.336"
    assert code in [w.code for w in soak.hardening().warnings]
    short = soak.with_measured_carbide({"M3C": 6.0})
    assert code not in [w.code for w in short.hardening().warnings]


def test_oil_hardening_steel_is_warned_of_short_soaks_annealed_steel_is_not():
    code = "gibbsteel.warning.336"
    oil = gs.Steel({"C": 0.92, "Mn": 1.2, "Cr": 0.5, "W": 0.5, "V": 0.1})
    assert code in [w.code for w in oil.soak(celsius=805).hardening().warnings]
    assert code not in [w.code for w in oil.soak(celsius=680).hardening().warnings]

"""Dicts by element or phase: what [] says of a name that is not there."""

import copy
import json
import pickle

import gibbsteel as gs
import pytest


def refused(call, expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == expected
    assert isinstance(error.value, KeyError)


def test_an_element_that_is_absent(state):
    content = state.matrix.weight_percent
    present = ", ".join(content)
    refused(
        lambda: content["Co"],
        '[gibbsteel.input.288] weight_percent: holds no Co; get("Co", 0.0) gives 0 for '
        f"it; present: {present}",
    )
    refused(
        lambda: state["MC"].atom_fraction["Co"],
        '[gibbsteel.input.288] atom_fraction: holds no Co; get("Co", 0.0) gives 0 for '
        f"it; present: {', '.join(state['MC'].atom_fraction)}",
    )
    refused(
        lambda: state.analysis.given["Co"],
        '[gibbsteel.input.288] given: holds no Co; get("Co", 0.0) gives 0 for it; '
        f"present: {', '.join(state.analysis.given)}",
    )
    refused(
        lambda: state.hardening().austenite["carbon"],
        "[gibbsteel.input.201] austenite: 'carbon' is not the symbol of an element; "
        "did you mean 'C'?",
    )
    refused(
        lambda: state.chemical_potential["Co"],
        "[gibbsteel.input.288] chemical_potential: holds no Co; an element that is "
        f"absent has none; present: {present}",
    )


def test_what_is_no_element(state):
    wrong = "is not the symbol of an element"
    refused(
        lambda: state.matrix.weight_percent["carbon"],
        f"[gibbsteel.input.201] weight_percent: 'carbon' {wrong}; did you mean 'C'?",
    )
    refused(
        lambda: state.matrix.weight_percent["Xx"],
        f"[gibbsteel.input.201] weight_percent: 'Xx' {wrong}; give a symbol such as Cr",
    )
    refused(
        lambda: state.matrix.weight_percent[0],
        f"[gibbsteel.input.201] weight_percent: '0' {wrong}; give a symbol such as Cr",
    )


def test_a_phase_that_is_absent(state):
    refused(
        lambda: state.carbides["M23C6"],
        "[gibbsteel.input.209] state: 'M23C6' is absent; volume_percent_of() gives 0 "
        "for it; present: austenite, M6C, MC",
    )
    refused(
        lambda: state.carbides["austenite"],
        "[gibbsteel.input.288] carbides: 'austenite' is no carbide; take "
        "state['austenite'], which is any phase",
    )
    refused(
        lambda: state.matrix_phases["MC"],
        "[gibbsteel.input.288] matrix phases: 'MC' is no matrix phase; take "
        "state['MC'], which is any phase",
    )
    known = ", ".join(state.kinds)
    refused(
        lambda: state.carbides["cementite"],
        "[gibbsteel.input.205] state: there is no phase 'cementite'; did you mean "
        f"'M3C'? choose from: {known}",
    )


def test_a_driving_force_that_is_not_there(punch):
    state = punch.soak(celsius=1120, suppressed="M6C")
    held = ", ".join(state.driving_force)
    assert "M6C" not in state.driving_force
    refused(
        lambda: state.driving_force["M6C"],
        "[gibbsteel.input.288] driving_force: holds no 'M6C'; a phase that is "
        f"suppressed or lacks its elements has none; present: {held}",
    )
    refused(
        lambda: state.driving_force["M9C"],
        "[gibbsteel.input.205] state: there is no phase 'M9C'; choose from: "
        + ", ".join(state.kinds),
    )


def test_they_are_dicts_in_every_other_way(state):
    content = state.matrix.weight_percent
    plain = dict(content)
    assert content == plain and repr(content) == repr(plain)
    assert list(content) == list(plain) and len(content) == len(plain)
    assert "Co" not in content and content.get("Co") is None
    assert content.get("Co", 0.0) == 0.0
    assert json.loads(json.dumps(content)) == plain
    for again in (
        pickle.loads(pickle.dumps(content)),
        copy.copy(content),
        copy.deepcopy(state.carbides),
    ):
        assert type(again) is dict
    assert list(state.carbides) == ["M6C", "MC"]


def test_slopes_say_which_phase_they_lack(punch):
    slopes = punch.sensitivities(celsius=1120, elements="C")["C"]
    with pytest.raises(gs.InputError) as error:
        slopes["M7C3"]
    present = ", ".join(o.name for o in slopes.occurrences)
    assert str(error.value) == (
        f"[gibbsteel.input.209] slopes: 'M7C3' is absent; present: {present}"
    )

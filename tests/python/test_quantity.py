"""Quantities: built-in ones, and Python functions of a state."""

import math
import pickle

import gibbsteel as gs
import pytest


def matrix_chromium(state):
    return state.matrix.weight_percent["Cr"]


def test_built_in_quantities_read_the_state(state):
    q = gs.quantities
    carbon = q.matrix("C")
    assert (carbon.name, carbon.unit) == ("C in the matrix", "wt%")
    assert carbon.label == "C in the matrix [wt%]"
    assert repr(carbon) == "<Quantity C in the matrix [wt%]>"
    assert carbon.value(state) == state.matrix.weight_percent["C"]
    assert q.volume_percent("M6C").value(state) == state.volume_percent_of("M6C")
    assert q.mass_percent("M6C").value(state) == state["M6C"].mass_percent
    assert q.mass_percent("M7C3").value(state) == 0.0
    assert q.carbide_volume_percent().value(state) == state.carbide_volume_percent
    assert q.carbide_mass_percent().value(state) == state.carbide_mass_percent
    assert q.carbon_activity().value(state) == state.carbon_activity


def test_a_python_function_is_a_quantity(state):
    quantity = gs.Quantity("chromium", "wt%", matrix_chromium)
    assert quantity.value(state) == state.matrix.weight_percent["Cr"]


def test_a_state_that_is_not_usable_gives_nan():
    alone = gs.Steel({"C": 10}).soak(celsius=1000, phases=["M3C"])
    assert not alone.usable
    assert math.isnan(gs.Quantity("x", "", matrix_chromium).value(alone))
    assert math.isnan(gs.quantities.matrix("C").value(alone))


def test_an_exception_of_the_function_reaches_the_caller(state):
    def fails(state):
        raise ZeroDivisionError("of the function")

    with pytest.raises(ZeroDivisionError, match="of the function"):
        gs.Quantity("x", "", fails).value(state)
    with pytest.raises(TypeError):
        gs.Quantity("x", "", lambda state: None).value(state)


def problem(call, *arguments, **keywords):
    with pytest.raises(gs.InputError) as error:
        call(*arguments, **keywords)
    return str(error.value)


def test_what_is_no_element_is_refused_where_it_is_made(punch):
    q = gs.quantities
    head = "[gibbsteel.input.201] element: "
    wrong = "'c' is not the symbol of an element; did you mean 'C'?"
    assert problem(q.matrix, "c") == head + wrong
    assert problem(q.in_phase, "M6C", "c") == head + wrong
    assert problem(q.in_carbides, "c") == head + wrong
    assert problem(q.short_soak_matrix, "c") == head + wrong
    assert problem(punch.temperature_for, matrix={"c": 0.5}) == head + wrong
    assert problem(q.matrix, "Chromium") == (
        head + "'Chromium' is not the symbol of an element; did you mean 'Cr'?"
    )


KINDS = (
    "austenite, MC, ferrite, M6C, M7C3, M23C6, M3C, M2C, hexagonal matrix, "
    "M3C2, hexagonal MC, graphite"
)
CEMENTITE = (
    "[gibbsteel.input.205] kind: there is no phase 'cementite'; did you mean 'M3C'? "
    f"choose from: {KINDS}"
)
NIOBIUM = (
    "[gibbsteel.input.206] quantity, Nb in the matrix: Nb is not modelled by the "
    "parameter file; choose from: Fe, C, Cr, Mo, W, V, Co, Ni, Mn, Si; or load a file "
    "that models it"
)


def test_what_the_parameter_file_lacks_is_refused_before_a_soak(punch, state):
    q = gs.quantities
    both = [q.volume_percent("cementite"), q.matrix("Nb")]
    text = f"{CEMENTITE}\n{NIOBIUM}"
    at = {"celsius": 1100}
    assert problem(gs.screen, [[0.5]], ["C"], quantities=both, **at) == text
    assert problem(gs.compare, [punch], quantities=both, **at) == text
    assert problem(punch.temperature_for, both[1], 0.1) == NIOBIUM
    assert (
        problem(punch.composition_for, "C", both[0], 1, percent=(0.3, 0.8), **at)
        == CEMENTITE
    )
    wish = gs.target(both[1], equal=0.1, **at)
    assert problem(gs.design, punch, vary={"C": (0.3, 0.8)}, targets=[wish]) == NIOBIUM
    assert problem(both[0].value, state) == CEMENTITE
    with_niobium = gs.default_parameters("niobium_titanium_nitrogen")
    found = gs.screen([[0.5, 0.1]], ["C", "Nb"], parameters=with_niobium, **at)
    assert found.count() == {"usable": 1}
    at |= {"parameters": with_niobium, "quantities": both[1:]}
    table = gs.screen([[0.5]], ["C"], **at)
    assert table.quantity.tolist() == [[0.0]]


@pytest.mark.parametrize(
    "quantity",
    [
        gs.quantities.matrix("C"),
        gs.quantities.volume_percent("M6C"),
        gs.quantities.mass_percent("M6C"),
        gs.quantities.carbide_volume_percent(),
        gs.quantities.carbide_mass_percent(),
        gs.quantities.carbon_activity(),
        gs.Quantity("chromium", "wt%", matrix_chromium),
    ],
    ids=repr,
)
def test_pickling(quantity, state):
    copy = pickle.loads(pickle.dumps(quantity))
    assert copy.label == quantity.label
    assert copy.value(state) == quantity.value(state)

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


def test_an_unknown_kind_is_refused_by_the_first_state(state):
    with pytest.raises(gs.InputError, match=r"gibbsteel\.input\.205"):
        gs.quantities.volume_percent("M7C").value(state)


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

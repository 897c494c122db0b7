"""Quantities of soaks of minutes: parameter sets, pickles, names, arguments."""

import json
import math
import pickle

import gibbsteel as gs
import pytest
from gibbsteel.parameters import parse_once

q = gs.quantities
STEEL = {"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}
SET = gs.default_parameters("iron_as_measured")
HRC = q.hardness_hrc(coldest_celsius=20)


def made(**settings):
    return [
        q.short_soak_matrix("C", **settings),
        q.timed_soak_matrix("C", 30, **settings),
        q.after_minutes(HRC, 30, **settings),
    ]


@pytest.mark.parametrize("which", range(3))
def test_bands_of_the_file_move_it_as_its_own_soaks_would(which):
    steel = gs.Steel(STEEL, parameters=SET)
    quantity = made()[which]
    band = steel.parameter_band(celsius=860, quantities=[quantity], samples=8)
    (of,) = band.quantities
    given = made(parameters=SET)[which]
    assert of.nominal == given.value(steel.soak(celsius=860))
    assert math.isfinite(of.sampled.mean)
    assert of.first_order.standard_deviation > 0.0 and not of.first_order.remark
    same = steel.parameter_band(celsius=860, quantities=[given], samples=8)
    assert same.quantities[0].sampled.mean == of.sampled.mean
    # By hand: the number that moves it most, a layer with another value.
    most = max(of.contributions, key=lambda c: c.scatter)
    low, high = (moved(steel, most, which, by) for by in (-0.02, 0.02))
    number = next(i for i in band.inputs if i.name == most.input)
    by_hand = (high - low) / (0.04 * number.standard_deviation)
    assert most.slope == pytest.approx(by_hand, rel=0.02)


def moved(steel, contribution, which, deviations):
    """The value with a number of the file so many standard deviations away."""
    text = json.loads(gs.write_parameters(SET))
    *path, last = contribution.input.strip("/").split("/")
    node = text
    for step in path:
        node = node[_index(node, step)]
    at = _index(node, last)
    node[at] += deviations * abs(contribution.scatter / contribution.slope)
    other = parse_once(json.dumps(text))
    state = gs.Steel(STEEL, parameters=other).soak(celsius=860)
    return made(parameters=other)[which].value(state)


def _index(node, step):
    return int(step) if isinstance(node, list) else step


@pytest.mark.parametrize("which", range(3))
def test_a_calibration_takes_it_with_the_numbers_it_tries(which):
    steel = gs.Steel(STEEL, name="52100", parameters=SET)
    quantity = made()[which]
    place = "/phases/austenite/energy/63/terms/1"
    before = made(parameters=SET)[which].value(steel.soak(celsius=860))
    wanted = before * (0.998 if which == 2 else 0.97)
    measurement = gs.measurement(steel, quantity, wanted, 1e-4 * wanted, celsius=860)
    fit = gs.calibrate([measurement], [place], on=SET, cross_validate=False)
    (outcome,) = fit.measurements
    assert outcome.before == pytest.approx(before, rel=1e-9)
    assert outcome.after == pytest.approx(wanted, rel=1e-3)
    value = made(parameters=fit.parameters)[which].value(
        gs.Steel(STEEL, parameters=fit.parameters).soak(celsius=860)
    )
    assert outcome.after == pytest.approx(value, rel=1e-6)


def test_of_another_set_than_that_of_the_steel_it_is_refused():
    band = gs.Steel(STEEL, parameters=SET).parameter_band
    with pytest.raises(gs.InputError) as caught:
        band(celsius=860, quantities=made(parameters=gs.default_parameters()))
    assert str(caught.value) == (
        "[gibbsteel.input.266] parameters: are not those the state was made with; give "
        "the parameter set of the steel"
    )


@pytest.mark.parametrize("which", range(3))
def test_a_quantity_with_its_parameter_set_can_be_pickled(which):
    state = gs.Steel(STEEL, parameters=SET).soak(celsius=860)
    quantity = made(parameters=SET, annealed_celsius=690)[which]
    again = pickle.loads(pickle.dumps(quantity))
    assert again.label == quantity.label
    assert again.value(state) == quantity.value(state)
    assert math.isfinite(again.value(state))


def test_a_quantity_of_minutes_is_not_taken_after_minutes_again():
    with pytest.raises(gs.InputError) as caught:
        q.after_minutes(q.timed_soak_matrix("C", 30), 30)
    assert str(caught.value) == (
        "[gibbsteel.input.220] quantity: is of a soak of minutes already: C in the "
        "matrix, timed soak of 30 min; give a quantity of the long hold"
    )


def test_names_say_what_is_not_usual():
    said = [quantity.name for quantity in made(annealed_fahrenheit=1202)]
    assert said == [
        "C in the matrix, short soak, annealed at 650 C",
        "C in the matrix, timed soak of 30 min, annealed at 650 C",
        "as-quenched hardness, timed soak of 30 min, annealed at 650 C",
    ]
    fine, coarse = (q.timed_soak_matrix("C", 30, d).name for d in (0.4, 0.8))
    assert fine == "C in the matrix, timed soak of 30 min, M3C of 0.4 micrometre"
    assert coarse == "C in the matrix, timed soak of 30 min, M3C of 0.8 micrometre"


def test_a_pickled_limit_knows_its_annealing():
    limit = gs.Steel(STEEL).soak(celsius=845).short_soak_limit(annealed_celsius=650)
    state = pickle.loads(pickle.dumps(limit.state))
    assert (state.soak_minutes, state.particle_micrometres) == (None, None)
    assert math.isnan(q.short_soak_matrix("C").value(state))
    cold = q.short_soak_matrix("C", 650)
    assert cold.value(state) == limit.state.matrix.weight_percent["C"]


@pytest.mark.parametrize(
    ("make", "said"),
    [
        (
            lambda: q.timed_soak_matrix(3, 30),
            "[gibbsteel.input.220] element: is int, not str; give a symbol",
        ),
        (
            lambda: q.short_soak_matrix(3),
            "[gibbsteel.input.220] element: is int, not str; give a symbol",
        ),
        (
            lambda: q.short_soak_matrix("C", annealed_celsius="abc"),
            "[gibbsteel.input.220] annealed_celsius: is str, not float; give a "
            "number",
        ),
        (
            lambda: q.short_soak_matrix("C", 700, annealed_fahrenheit=1200),
            "[gibbsteel.input.211] temperature: got celsius= and fahrenheit=; give "
            "exactly one of celsius=, fahrenheit= and kelvin=",
        ),
    ],
)
def test_arguments_of_another_kind_are_refused(make, said):
    with pytest.raises(gs.InputError) as caught:
        make()
    assert str(caught.value) == said

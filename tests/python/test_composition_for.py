"""Steel.composition_for."""

import pickle

import gibbsteel as gs
import pytest
from gibbsteel import quantities


@pytest.fixture(scope="module")
def search(punch):
    return punch.composition_for(
        "C", matrix_carbon=0.4, percent=(0.2, 1.0), celsius=1050
    )


def test_the_answer_is_a_steel_with_that_value(punch, search):
    assert search.status == "found" and search.complete
    assert search.weight_percents == [c.weight_percent for c in search.crossings]
    for crossing in search.crossings:
        state = punch.changed(C=crossing.weight_percent).soak(celsius=1050)
        assert state.matrix.weight_percent["C"] == pytest.approx(0.4, abs=1e-4)
        assert crossing.kind == "crossing" and crossing.rising
    assert search.range == (0.2, 1.0)
    assert search.element == "C"
    assert search.text.startswith("C in the matrix is 0.4 wt% at 0.")


def test_a_quantity_of_ones_own(punch):
    total = gs.Quantity("Mo and W", "wt%", lambda s: sum_of(s, "Mo", "W"))
    found = punch.composition_for(
        "Mo", total, 3.8, percent=(1, 5), fahrenheit=2012, steps=8, tolerance=1e-3
    )
    assert found.status == "found"
    assert sum_of(found.crossings[0].state, "Mo", "W") == pytest.approx(3.8, abs=1e-2)


def sum_of(state, *symbols):
    return sum(state.matrix.weight_percent[symbol] for symbol in symbols)


def test_it_is_a_value(search):
    copy = pickle.loads(pickle.dumps(search))
    assert str(copy) == str(search)
    assert repr(copy) == repr(search)
    assert copy.weight_percents == search.weight_percents
    assert repr(search.crossings[0]).startswith("<CompositionCrossing at 0.")


def test_it_takes_what_a_soak_takes(punch):
    whole = {"matrix_carbon": 0.4, "percent": (0.2, 1.0), "celsius": 1050}
    few = punch.composition_for("C", phases=["austenite"], **whole)
    carbides = {kind for c in few.crossings for kind in c.state.carbides}
    assert few.status == "found" and carbides == {"MC"}
    (found,) = few.weight_percents
    alone = punch.changed(C=found).soak(celsius=1050, phases=["austenite"])
    assert alone.matrix.weight_percent["C"] == pytest.approx(0.4, abs=1e-4)
    options = gs.SolveOptions(certify="many starts")
    hot = punch.composition_for(
        "C", options=options, at_soak_temperature=True, **whole
    )
    assert hot.crossings[0].state.at_soak_temperature


def test_it_is_stopped_by_the_caller_or_its_limit(punch):
    told = []

    def stop(done):
        told.append(done)
        return done < 6

    search = {"matrix_carbon": 0.4, "percent": (0.2, 1.0), "celsius": 1050}
    stopped = punch.composition_for("C", progress=stop, **search)
    assert told == [1, 2, 3, 4, 5, 6]
    assert stopped.stopped == "cancelled" and not stopped.complete
    short = punch.composition_for("C", most_soaks=12, **search)
    assert short.stopped == "the limit of 12 soaks was reached"
    whole = punch.composition_for("C", progress=lambda done: None, **search)
    assert whole.stopped == ""


def test_errors(punch):
    with pytest.raises(gs.InputError) as error:
        punch.composition_for(
            "C", quantities.matrix("C"), 0.4, percent=0.5, celsius=1050
        )
    assert str(error.value) == (
        "[gibbsteel.input.268] range: is 0.5; give the lowest and the highest weight "
        "percent, for instance (0.3, 0.9)"
    )
    with pytest.raises(gs.InputError) as error:
        punch.composition_for(
            "C", quantities.matrix("C"), 0.4, percent=(0.9, 0.2), celsius=1050, steps=2
        )
    assert str(error.value) == (
        "[gibbsteel.input.268] range: goes from 0.9 to 0.2 wt%; give 0 or more, the "
        "lower number first\n"
        "[gibbsteel.input.268] steps: is 2; give 4 to 10000"
    )

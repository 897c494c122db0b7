"""Slopes of a soak: the Python face."""

import math
import pickle

import gibbsteel as gs
import pytest


@pytest.fixture(scope="module")
def slopes(punch):
    return punch.sensitivities(celsius=1120)


def test_inputs(punch, slopes):
    assert slopes.inputs == ["temperature", "C", "Cr", "Mo", "W", "V"]
    assert len(slopes) == 6
    assert "C" in slopes and "Co" not in slopes
    only = punch.sensitivities(celsius=1120, elements="C")
    assert only.inputs == ["temperature", "C"]
    assert punch.sensitivities(kelvin=1393.15, elements=[]).inputs == ["temperature"]


def test_slopes_have_the_form_of_the_state(slopes):
    state, carbon = slopes.state, slopes["C"]
    assert [o.name for o in carbon.occurrences] == [o.name for o in state.occurrences]
    assert list(carbon.matrix.weight_percent) == list(state.matrix.weight_percent)
    assert list(carbon.driving_force) == list(state.driving_force)
    assert carbon["M6C"] in carbon.occurrences
    assert (carbon.input.kind, carbon.input.unit) == ("element", "wt%")
    assert slopes["temperature"].input.unit == "K"
    assert not carbon.one_sided and carbon.remark == ""


def test_a_difference_of_soaks(punch, slopes):
    h = 0.5
    up, down = (punch.soak(celsius=1120 + s * h) for s in (1, -1))
    for quantity in (
        gs.quantities.matrix("C"),
        gs.quantities.carbide_volume_percent(),
        gs.quantities.volume_percent("M6C"),
        gs.quantities.carbon_activity(),
        gs.Quantity("square", "", lambda s: s.matrix.weight_percent["C"] ** 2),
    ):
        expected = (quantity.value(up) - quantity.value(down)) / (2 * h)
        slope = quantity.slope(slopes.state, slopes["temperature"])
        assert slope == pytest.approx(expected, rel=1e-4)


def test_parameters(punch):
    inputs = gs.default_parameters().parameter_inputs
    assert all(item.kind == "parameter" for item in inputs)
    places = {item.name: item.unit for item in inputs}
    place = next(p for p in places if p.startswith("/phases/M6C/energy/0/terms/"))
    one = punch.sensitivities(celsius=1120, elements=[], parameters=place)
    assert one.inputs == ["temperature", place]
    assert one[place].input.unit == places[place]
    everything = punch.sensitivities(celsius=1120, elements=[], parameters="all")
    assert everything.inputs == ["temperature", *places]
    assert everything[place].gibbs_energy == one[place].gibbs_energy


def test_table(slopes):
    frame = slopes.to_frame()
    assert list(frame.columns) == ["value", "per_K"] + [
        f"per_wt%_{symbol}" for symbol in ("C", "Cr", "Mo", "W", "V")
    ]
    assert frame.index.is_unique
    row = frame.loc[("matrix", "weight_percent_C", "wt%")]
    assert row["value"] == slopes.state.matrix.weight_percent["C"]
    assert row["per_K"] == slopes["temperature"].matrix.weight_percent["C"]
    assert row["per_wt%_V"] == slopes["V"].matrix.weight_percent["C"]
    assert frame.attrs["one_sided"] == []


def test_they_print_their_main_numbers(slopes):
    text = str(slopes)
    for word in ("value", "per K", "per wt% C", "M6C [vol%]", "C in the matrix [wt%]"):
        assert word in text
    carbon = slopes["C"].matrix.weight_percent["C"]
    assert f" {carbon:.4g}" in text
    alone = str(slopes["C"]).splitlines()
    assert alone[0].split() == ["per", "wt%", "C"]
    assert alone[-1].split()[:2] == ["carbon", "activity"]
    assert slopes._repr_html_() is not None


def test_pickling(slopes):
    copy = pickle.loads(pickle.dumps(slopes))
    assert repr(copy) == repr(slopes)
    assert copy.to_frame().equals(slopes.to_frame())
    assert copy["C"].input == slopes["C"].input
    assert repr(copy["C"]) == "<StateSlope per wt% of C>"
    assert repr(copy["C"].input) == "<Input C [wt%]>"


def test_a_state_that_is_not_usable(punch):
    none = punch.sensitivities(celsius=1120, phases=["M3C"])
    assert not none.state.usable
    assert len(none) == 0
    assert none.to_frame().empty


def test_a_compound_alone_has_no_slopes():
    iron, carbon = 3 * 55.845, 12.011
    share = 100 * carbon / (iron + carbon)
    cementite = gs.Steel({"Fe": 100 - share, "C": share})
    slopes = cementite.sensitivities(celsius=1000, phases=["M3C"])
    assert slopes.state.usable
    assert math.isnan(slopes["C"].gibbs_energy)
    assert slopes["C"].remark == "the equilibrium leaves amounts or potentials free"


def test_wrong_inputs(punch):
    with pytest.raises(gs.InputError) as info:
        punch.sensitivities(celsius=1120, elements=["Fe", "Co"])
    assert str(info.value) == (
        "[gibbsteel.input.216] elements: Fe is the balance of all others; choose "
        "elements of the calculation other than Fe\n"
        "[gibbsteel.input.216] elements: there is no Co in the calculation; compare() "
        "the steel with one that has some, changed(Co=1), or choose elements of the "
        "calculation other than Fe"
    )
    with pytest.raises(gs.InputError, match=r"gibbsteel\.input\.211"):
        punch.sensitivities(1120)
    with pytest.raises(gs.InputError) as info:
        punch.sensitivities(celsius=1120)["Co"]
    assert str(info.value) == (
        "[gibbsteel.input.209] sensitivities: the calculation holds no Co; compare() "
        "the steel with one that has some, changed(Co=1), or choose from: temperature, "
        "C, Cr, Mo, W, V, and the places of parameters asked for"
    )

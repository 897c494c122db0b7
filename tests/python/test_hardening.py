"""Hardening estimates from Python: values, own equations, errors, pickling."""

import math
import pickle

import gibbsteel as gs
import pytest
from gibbsteel import quantities

MATRIX_TYPE = gs.Steel(C=0.55, Cr=4.5, Mo=2.75, W=2.0, V=1.0, name="punch heat 7")
STATE = MATRIX_TYPE.soak(celsius=1120)


def raised(function):
    with pytest.raises(gs.InputError) as caught:
        function()
    return str(caught.value)


def start_by_carbon(given):
    """At module level, so that it can be pickled."""
    return 500.0 - 400.0 * given.weight_percent["C"]


def own_equations():
    return gs.property_equations().with_equation(
        "martensite start",
        "shop",
        start_by_carbon,
        formula="500 - 400 C",
        source="own dilatometer",
        ranges={"C": (0.3, 0.6)},
        elements=["C"],
        error=15.0,
        note="one heat",
    )


def test_estimates_have_value_band_unit_equation_and_source():
    estimates = STATE.hardening(particle_diameter=0.4)
    for name, unit in [
        ("martensite_start", "C"),
        ("retained_austenite", "vol%"),
        ("retained_austenite_of_matrix", "vol%"),
        ("hardness_hv", "HV"),
        ("hardness_hrc", "HRC"),
        ("grain_diameter", "um"),
    ]:
        estimate = getattr(estimates, name)
        assert estimate.unit == unit
        assert estimate.low <= estimate.value <= estimate.high
        assert estimate.known and estimate.equation and estimate.source
        assert float(estimate) == estimate.value
    assert estimates.family.key == "high-speed" and not estimates.family_chosen
    assert estimates.austenite["C"] == STATE["austenite"].weight_percent["C"]
    assert estimates.steel_indices == gs.trade_indices(MATRIX_TYPE.analysis.given)


def test_the_coldest_temperature_in_either_unit():
    cold = STATE.hardening(coldest_celsius=-75)
    assert STATE.hardening(coldest_fahrenheit=-103) == cold
    assert cold.coldest_celsius == pytest.approx(-75)
    assert cold.retained_austenite.value < STATE.hardening().retained_austenite.value
    assert STATE.hardening(coldest_celsius=20) == STATE.hardening()


def test_repr_is_one_line_and_str_the_table():
    estimates = STATE.hardening()
    assert repr(estimates).startswith(
        "<punch heat 7 quenched from 1120 C (2048 F) to 20 C (68 F), long-hold limit: "
        "martensite start"
    )
    assert "\n" not in repr(estimates)
    assert repr(estimates.martensite_start).startswith("<martensite start 2")
    text = str(estimates)
    for part in [
        "family: high-speed and matrix-type steel (high-speed, by composition)",
        "low to high: about two in three measurements, for this austenite; of "
        "hardness\n  all 38 that were compared, 15 of them fitted to\n",
        "As-quenched hardness is that of a fully martensitic quench, no pearlite, no\n"
        "  bainite: section, quench and hardenability are not considered.\n",
        "as-quenched hardness: carbon-quadratic (H18), mixed by (H20) + "
        f"{estimates.family.hardness_offset:.0f} HV",
        "Cr + 3.3(Mo + W/2) + 16N",
        "local codes and licensed practice come first.",
    ]:
        assert part in text
    assert max(map(len, text.splitlines())) <= 78


def test_another_equation_and_family():
    other = STATE.hardening(martensite_start="van-bohemen", family="general")
    equation = gs.property_equations().at("martensite start", "van-bohemen")
    given = gs.PropertyInput(STATE["austenite"].weight_percent)
    assert other.martensite_start.value == equation.value(given)
    assert other.family.key == "general" and other.family_chosen
    assert equation.slope_at(given).weight_percent["Mo"] == -12.0
    assert equation.label == "H7" and equation.ranges == {"C": (0.1, 1.9)}


def test_an_equation_of_ones_own():
    equations = own_equations()
    own = STATE.hardening(martensite_start="shop", equations=equations)
    carbon = STATE["austenite"].weight_percent["C"]
    assert own.martensite_start.value == pytest.approx(500 - 400 * carbon)
    assert own.martensite_start.source == "own dilatometer"
    assert own.martensite_start.high - own.martensite_start.value == pytest.approx(15)
    assert len(gs.property_equations()) + 1 == len(equations)
    assert repr(equations) == "<PropertyEquations: 25 built in, 1 of your own>"
    shop = equations.at("martensite start", "shop")
    assert (shop.kind, shop.unit, shop.note) == ("martensite start", "C", "one heat")
    slope = shop.slope_at(gs.PropertyInput({"C": 0.5}))
    assert slope.weight_percent["C"] == pytest.approx(-400.0)


def test_what_an_own_equation_raises_arrives():
    def fails(given):
        raise ZeroDivisionError("in the shop")

    for function, error in [(fails, ZeroDivisionError), (lambda x: "hot", TypeError)]:
        equations = gs.property_equations().with_equation(
            "martensite start", "bad", function
        )
        with pytest.raises(error):
            STATE.hardening(martensite_start="bad", equations=equations)


def test_an_own_equation_without_a_number_gives_an_unknown_estimate():
    equations = gs.property_equations().with_equation(
        "martensite start", "none", lambda given: math.nan
    )
    estimates = STATE.hardening(martensite_start="none", equations=equations)
    assert not estimates.martensite_start.known
    assert estimates.martensite_start.remarks[-1] == "none: gives no number here"
    assert not estimates.hardness_hrc.known


def test_whole_texts_of_errors():
    assert raised(
        lambda: STATE.hardening(coldest_celsius=20, coldest_fahrenheit=68)
    ) == (
        "[gibbsteel.input.211] coldest temperature: got coldest_celsius= and "
        "coldest_fahrenheit=; give one of them"
    )
    assert raised(lambda: STATE.hardening(coldest_celsius=1200)) == (
        "[gibbsteel.input.243] coldest temperature: is 1200 C, not below the soak at "
        "1120 C; give the temperature that the quench reaches"
    )
    assert raised(lambda: STATE.hardening(retained_austenite="x", family="y")) == (
        "[gibbsteel.input.242] family: there is no family 'y'; choose one of "
        "high-speed, chromium-cold-work, stainless, bearing, general\n"
        "[gibbsteel.input.240] retained austenite: there is no equation 'x'; choose "
        "one of koistinen-marburger, van-bohemen-sietsma, van-bohemen-rate"
    )
    assert raised(lambda: gs.property_equations().keys("hardness")) == (
        "[gibbsteel.input.246] kind: there is no kind 'hardness'; choose one of "
        "'martensite start', 'retained austenite', 'martensite hardness', "
        "'grain pinning'"
    )
    assert raised(
        lambda: gs.property_equations().with_equation("martensite start", "", None)
    ) == (
        "[gibbsteel.input.241] equation '': has no key; give the name to choose it by\n"
        "[gibbsteel.input.241] equation '': has no function; give a function that "
        "computes it"
    )


def test_results_are_read_only_and_pickle():
    estimates = STATE.hardening(particle_diameter=0.4)
    for thing in [
        estimates,
        estimates.martensite_start,
        estimates.matrix_indices,
        estimates.family,
    ]:
        assert pickle.loads(pickle.dumps(thing)) == thing
        assert thing != 1
    with pytest.raises(AttributeError):
        estimates.steel = "other"
    with pytest.raises(AttributeError):
        estimates.martensite_start.value = 1.0
    estimates.warnings.clear()
    estimates.austenite.clear()
    assert estimates == STATE.hardening(particle_diameter=0.4)


def test_own_equations_pickle():
    copy = pickle.loads(pickle.dumps(own_equations()))
    assert len(copy) == len(own_equations())
    again = STATE.hardening(martensite_start="shop", equations=copy)
    assert again == STATE.hardening(martensite_start="shop", equations=own_equations())


def test_quantities_are_the_same_numbers_and_pickle():
    estimates = STATE.hardening(coldest_celsius=-75, family="general")
    for name in [
        "martensite_start",
        "retained_austenite",
        "hardness_hv",
        "hardness_hrc",
    ]:
        make = getattr(quantities, name)
        quantity = make(coldest_celsius=-75, family="general")
        value = quantity.value(STATE)
        assert value == pytest.approx(getattr(estimates, name).value, rel=1e-14)
        assert pickle.loads(pickle.dumps(quantity)).value(STATE) == value
    own = quantities.martensite_start(
        martensite_start="shop", equations=own_equations()
    )
    assert own.value(STATE) == start_by_carbon(
        gs.PropertyInput(STATE["austenite"].weight_percent)
    )


def test_slopes_of_quantities():
    slopes = MATRIX_TYPE.sensitivities(celsius=1120)
    hotter = MATRIX_TYPE.soak(celsius=1120.5)
    colder = MATRIX_TYPE.soak(celsius=1119.5)
    for quantity in [quantities.martensite_start(), quantities.hardness_hrc()]:
        exact = quantity.slope(slopes.state, slopes["temperature"])
        numeric = quantity.value(hotter) - quantity.value(colder)
        assert exact == pytest.approx(numeric, rel=1e-3)


def test_hardness_scales():
    # ASTM E140, from memory: 697 HV is 60 HRC, 720 HV 61 HRC.
    assert gs.hrc_from_hv(697) == pytest.approx(60.0, abs=0.3)
    assert gs.hv_from_hrc(gs.hrc_from_hv(700)) == pytest.approx(700)
    assert gs.carbide_hardness("M3C") == 1100
    assert math.isnan(gs.hv_from_hrc(100)) and math.isnan(gs.hrc_from_hv(-1))
    with pytest.raises(gs.InputError) as error:
        gs.carbide_hardness("nonsense")
    assert str(error.value) == (
        "[gibbsteel.input.205] kind: there is no phase 'nonsense'; choose from: MC, "
        "M6C, M7C3, M23C6, M3C, M2C, M3C2, hexagonal MC"
    )
    with pytest.raises(gs.InputError) as error:
        gs.trade_indices({"Cr": -1.0})
    assert str(error.value) == (
        "[gibbsteel.input.203] composition, Cr: is negative: -1; give weight percent, "
        "from 0 to 100"
    )
    mixture = gs.mixture_hardness(
        martensite=817, austenite=0.12, carbide=0.14, carbide_hv=1500
    )
    assert mixture == pytest.approx(854, abs=0.5)


def test_high_ends_above_the_scale_go_on_along_its_curve():
    t15 = gs.Steel(C=1.55, Cr=4.0, V=5.0, W=12.25, Co=5.0)
    found = t15.soak(celsius=1180).hardening()
    hv, hrc = found.hardness_hv, found.hardness_hrc
    assert hrc.value < 68.3 < hrc.high
    assert math.isnan(gs.hrc_from_hv(hv.high))
    for end in ("value", "high"):
        on_curve = 99.8 - 36700 / (getattr(hv, end) + 223.5)
        assert getattr(hrc, end) == pytest.approx(on_curve, rel=1e-12)
    assert "(H21) is for 238 to 940 HV" not in hrc.remarks


def test_a_table_of_estimates():
    pytest.importorskip("pandas")
    estimates = STATE.hardening(coldest_celsius=-75)
    frame = estimates.to_frame()
    assert list(frame.columns) == [
        "steel",
        "temperature_C",
        "coldest_C",
        "name",
        "value",
        "low",
        "high",
        "unit",
        "equation",
        "source",
        "in_range",
        "remarks",
    ]
    hardness = frame[frame["unit"] == "HRC"].iloc[0]
    wanted = estimates.hardness_hrc
    assert (hardness["value"], hardness["low"]) == (wanted.value, wanted.low)
    assert hardness["high"] == wanted.high
    assert hardness["remarks"] == "; ".join(wanted.remarks) != ""
    assert hardness["temperature_C"] == pytest.approx(1120.0)
    assert hardness["coldest_C"] == pytest.approx(-75.0)
    assert math.isnan(frame[frame["unit"] == "um"]["value"].iloc[0])
    attrs = frame.attrs
    assert attrs["parameters"] == STATE.parameters
    assert attrs["limit"] == "long-hold limit (true equilibrium)"
    assert attrs["family"] == estimates.family.name
    assert attrs["warnings"] == [str(warning) for warning in estimates.warnings]
    assert attrs["units"] == {"temperature_C": "degC", "coldest_C": "degC"}


def test_a_table_of_estimates_of_a_soak_of_minutes():
    pytest.importorskip("pandas")
    ring = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}, name="ring")
    estimates = ring.soak(celsius=860).timed_soak(30).hardening()
    assert estimates.condition == "timed soak of 30 min"
    attrs = estimates.to_frame().attrs
    assert attrs["limit"] == "timed soak of 30 min, matrix by mass balance"
    assert attrs["caution"].startswith("Estimate of a soak of minutes, counted from ")
    assert str(estimates).replace("\n", " ").endswith(attrs["caution"] + " ")


def test_the_band_of_the_grain_limit_is_that_of_two_models():
    bands = (
        "low to high: about two in three measurements, for this austenite; of "
        "hardness\n  all 38 that were compared, 15 of them fitted to"
    )
    assert bands + "\nAs-quenched" in str(STATE.hardening())
    models = "; of the grain limit from the\n  model hillert (H22) to zener (H23)"
    text = str(STATE.hardening(particle_diameter=0.4))
    assert bands + models + "\nAs-quenched" in text


def test_the_grain_limit_as_a_quantity():
    limit = quantities.grain_limit(0.4, grain_pinning="zener")
    estimate = STATE.hardening(
        particle_diameter=0.4, grain_pinning="zener"
    ).grain_diameter
    assert limit.value(STATE) == estimate.value
    assert limit.band(STATE) == (estimate.low, estimate.high)
    copy = pickle.loads(pickle.dumps(limit))
    assert copy.value(STATE) == estimate.value
    assert raised(lambda: quantities.grain_limit(-1.0).value(STATE)) == (
        "[gibbsteel.input.244] particle diameter: is -1; give the mean diameter in "
        "micrometres, for instance 0.5"
    )
    assert raised(lambda: quantities.grain_limit(None)) == (
        "[gibbsteel.input.244] particle diameter: is not given; give the mean diameter "
        "in micrometres, for instance 0.5"
    )

"""Own measurements of one heat: compared, calibrated, what the fit does to others.

The heat and its measurements are invented.
"""

import pickle

import gibbsteel as gs
import pytest
from gibbsteel import quantities

HEAT = gs.Steel(
    C=0.56, Cr=4.5, Mo=2.75, W=2.0, V=1.0, Mn=0.3, Si=0.3, name="heat 7411"
)
CARBON = "austenite, energy on (W, C), power 1"
PLACE = "/phases/austenite/energy/17/terms/1"
# More carbon in the matrix than the file computes, and less carbide.
SHOP = [
    *(
        gs.measurement(HEAT, quantities.matrix("C"), value, 0.015, celsius=celsius)
        for celsius, value in ((1050, 0.42), (1100, 0.47), (1150, 0.52))
    ),
    *(
        gs.measurement(
            HEAT, quantities.carbide_volume_percent(), value, 0.3, celsius=celsius
        )
        for celsius, value in ((1050, 2.3), (1100, 1.4))
    ),
]


@pytest.fixture(scope="module")
def fit():
    return gs.calibrate(SHOP)


def met(parameters):
    """Published measurements met, one by one by `evidence`."""
    total = 0
    for one in gs.published_measurements():
        m = one.measurement
        steel = gs.Steel(m.weight_percent, parameters=parameters)
        found = steel.evidence(celsius=m.celsius, most_soaks=1, measurements=[one])
        total += found.met
    return total


def test_without_numbers_those_that_the_file_states(fit):
    inputs = HEAT.parameter_band(celsius=1100).inputs
    assert [n.place for n in fit.numbers] == [i.name for i in inputs]
    assert [n.text for n in fit.numbers] == [i.text for i in inputs]
    assert [n.prior_deviation for n in fit.numbers] == [
        i.standard_deviation for i in inputs
    ]
    assert fit.numbers[0].text == CARBON and fit.numbers[0].place == PLACE


def test_a_fit_that_spoils_published_measurements_says_so(fit):
    check = fit.published
    assert (check.count, check.fitted_to, check.others) == (137, 0, 137)
    assert check.met_before == met(gs.default_parameters())
    assert check.met_after == met(fit.parameters) < check.met_before
    assert check.worse
    line = (
        f"published measurements met: {check.met_before} before, "
        f"{check.met_after} after, of 137"
    )
    assert repr(fit).endswith(f"; {line}>")
    assert repr(check) == f"<PublishedCheck: {line}>"
    assert (
        "! fewer published measurements are met than before: the numbers that suit "
        "these steels suit others less. Add those of published_measurements() to the "
        "fit, or give smaller prior standard deviations."
    ) in " ".join(str(fit).split())
    again = pickle.loads(pickle.dumps(fit))
    assert again.published == check and str(again) == str(fit)


def test_published_measurements_in_the_fit_keep_it_from_spoiling(fit):
    known = [
        one.measurement
        for one in gs.published_measurements()
        if one.measurement.record.startswith("hss/M2")
        and not one.measurement.quantity.name.startswith(("as-quenched", "retained"))
    ]
    both = gs.calibrate([*SHOP, *known], cross_validate=False)
    assert both.published.fitted_to == len(known)
    assert both.published.others == 137 - len(known)
    assert both.published.met_after > fit.published.met_after


def test_smaller_priors_spoil_less(fit):
    narrow = {n.place: 0.3 * n.prior_deviation for n in fit.numbers}
    less = gs.calibrate(SHOP, narrow, cross_validate=False)
    assert less.published.met_after > fit.published.met_after
    assert less.rms_after() < less.rms_before()


def test_the_check_can_be_left_out(fit):
    plain = gs.calibrate(SHOP, check_published=False)
    assert plain.layer == fit.layer
    assert (plain.published.count, plain.published.worse) == (0, False)
    assert repr(plain.published) == "<PublishedCheck>"
    assert "published" not in str(plain)


def test_one_name_and_names_in_words():
    by_text = gs.calibrate(SHOP, CARBON, cross_validate=False)
    by_place = gs.calibrate(SHOP, [PLACE], cross_validate=False)
    assert by_text.numbers == by_place.numbers
    assert by_text.numbers[0].place == PLACE
    start = {CARBON: by_text.numbers[0].before + 100.0}
    moved = gs.calibrate(SHOP, {CARBON: 4000.0}, start=start, cross_validate=False)
    assert moved.status == "converged"


@pytest.mark.parametrize("names, wrong", [("all", ["all"]), (["C", "W"], ["C", "W"])])
def test_names_that_no_number_has(names, wrong):
    with pytest.raises(gs.InputError) as error:
        gs.calibrate(SHOP, names)
    assert str(error.value) == "\n".join(
        f"[gibbsteel.input.300] numbers, {name}: there is no number at this place; "
        f"give places such as '{PLACE}' or what they are called, '{CARBON}'; "
        "parameter_inputs of the parameter set lists all places; in Python leave "
        "numbers out (stated_numbers() in C++) for the 31 whose standard deviation the "
        "set states"
        for name in wrong
    )


def test_no_numbers_of_a_set_that_states_none(first_edition):
    with pytest.raises(gs.InputError) as error:
        gs.calibrate(SHOP, on=first_edition)
    assert str(error.value) == (
        "[gibbsteel.input.300] numbers: none was named, and the set states no standard "
        "deviation; name numbers with their prior standard deviations"
    )


def test_an_empty_list_only_compares(tmp_path):
    compared = gs.calibrate(SHOP, [])
    assert (compared.status, compared.usable) == ("compared", False)
    assert compared.reason == "no number was free"
    state = HEAT.soak(celsius=1100)
    first, second = compared.measurements[1], compared.measurements[4]
    assert first.before == state.matrix.weight_percent["C"]
    assert second.before == state.carbide_volume_percent
    assert first.residual_before == (first.before - first.value) / first.uncertainty
    assert repr(compared) == (
        "<5 measurements beside what is computed, no number was free: 0 of 5 met "
        "within their uncertainty, rms miss 2.03>"
    )
    lines = str(compared).split("\n")
    assert lines[4] == (
        "measurement                           at  measured     +-  computed   miss"
    )
    assert lines[5] == (
        "heat 7411, C in the matrix [wt%]  1050 C      0.42  0.015   0.38917  -2.06"
    )
    again = pickle.loads(pickle.dumps(compared))
    assert str(again) == str(compared) and again.status == "compared"
    with pytest.raises(gs.InputError) as error:
        compared.save_layer(tmp_path / "none.json")
    assert str(error.value) == (
        "[gibbsteel.input.303] layer: the calibration has no layer: no number was "
        "free; mend the reason and calibrate again"
    )
    pytest.importorskip("pandas")
    frame = compared.to_frame()
    assert list(frame["before"]) == [m.before for m in compared.measurements]
    assert len(compared.numbers_to_frame()) == 0


def test_evidence_of_own_measurements():
    noted = gs.measurement(
        HEAT, quantities.matrix("C"), 0.47, 0.015, celsius=1100, record="shop book 12"
    )
    found = HEAT.evidence(celsius=1100, measurements=[*SHOP, noted])
    assert len(found) == found.measurements == 6
    assert [row.source for row in found.rows[:3]] == [
        "own measurement",
        "own measurement",
        "shop book 12",
    ]
    assert {row.confidence for row in found.rows} == {""}
    assert not any(row.from_memory or row.fitted_to for row in found.rows)
    assert found.rows[0].computed == HEAT.soak(celsius=1100).matrix.weight_percent["C"]
    mixed = HEAT.evidence(
        celsius=1100, measurements=[*SHOP, *gs.published_measurements()]
    )
    assert mixed.measurements == 142 and mixed.nearest == 0.0


def test_the_band_prints_what_the_numbers_are():
    band = HEAT.parameter_band(celsius=1100)
    assert f"\n{CARBON} " in str(band)
    assert PLACE not in str(band)
    copy = pickle.loads(pickle.dumps(band))
    assert copy.inputs == band.inputs and copy.inputs[0].text == CARBON
    furnace = HEAT.tolerance_band(celsius=1100, furnace_celsius=5, samples=0)
    assert furnace.inputs[0].text == ""


def test_hardening_of_a_calibrated_set_says_what_its_offset_rests_on(fit):
    calibrated = HEAT.with_parameters(fit.parameters).soak(celsius=1100).hardening()
    (text,) = [
        w.text for w in calibrated.warnings if w.code == "gibbsteel.warning.338"
    ]
    assert text == (
        "The hardness offset of the family was fitted with the austenite that the "
        "shipped file computes; this parameter set has other numbers, and how well the "
        "offset fits with them is not known. Compare with hardness that you measured."
    )
    assert text in " ".join(str(calibrated).split())
    plain = HEAT.soak(celsius=1100).hardening()
    assert "gibbsteel.warning.338" not in [w.code for w in plain.warnings]

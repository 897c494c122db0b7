"""State.short_soak_limit; its numbers against published soaks are records of
tests/reference, by the soaks of minutes that start from it (`minutes`)."""

import pickle

import gibbsteel as gs
import pytest

STEEL = {"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}


@pytest.fixture(scope="module")
def long_hold():
    return gs.Steel(STEEL, name="52100").soak(celsius=845)


@pytest.fixture(scope="module")
def short(long_hold):
    return long_hold.short_soak_limit()


def test_52100_comes_out_near_what_shops_find(short, long_hold):
    """0.62 +- 0.06 wt% C (BRG-06) and 5 +- 2 vol% M3C (BRG-05), both from memory."""
    state = short.state
    assert state.matrix.weight_percent["C"] == pytest.approx(0.62, abs=0.06)
    assert state["M3C"].volume_percent == pytest.approx(5.0, abs=2.0)
    assert long_hold.matrix.weight_percent["C"] > 0.85
    assert state.usable and state.solve_report.status == "short-soak limit"
    assert 0.0 < state.carbon_activity < long_hold.carbon_activity
    assert state.warnings[0].code == "gibbsteel.warning.349"


def test_the_band_runs_to_the_long_hold_limit(short, long_hold):
    band = short.band("C")
    assert band.low == band.value == short.state.matrix.weight_percent["C"]
    assert band.high == band.long_hold == long_hold.matrix.weight_percent["C"]
    assert band.standard_deviation == 0.0


def test_the_annealing_temperature(long_hold, short):
    assert short.annealed_kelvin == pytest.approx(973.15)
    same = long_hold.short_soak_limit(annealed_fahrenheit=1292.0)
    assert same.state.occurrences == short.state.occurrences
    other = long_hold.short_soak_limit(annealed_celsius=600)
    assert other.state["M3C"].weight_percent["Cr"] > 8.6
    with pytest.raises(gs.InputError) as caught:
        long_hold.short_soak_limit(annealed_celsius=700, annealed_fahrenheit=1292)
    assert "gibbsteel.input.211" in str(caught.value)


def test_steels_without_cementite_are_refused():
    a2 = gs.Steel({"C": 1.0, "Cr": 5.2, "Mo": 1.1, "V": 0.3, "Mn": 0.6})
    with pytest.raises(gs.InputError) as caught:
        a2.soak(celsius=960).short_soak_limit()
    assert str(caught.value) == (
        "[gibbsteel.input.284] short and timed soaks: are for steels whose annealed "
        "carbide is cementite (52100, O1, W1 types): annealing at 700 C leaves no "
        "M3C, but carbide that gives up carbon only with its metals: M7C3, MC; take "
        "the long-hold limit (after minutes less carbon is in the matrix in "
        "practice), or count the carbide and use with_measured_carbide"
    )


def test_an_own_parameter_set_must_be_given():
    own = gs.default_parameters("iron_as_measured")
    state = gs.Steel(STEEL, parameters=own).soak(celsius=845)
    with pytest.raises(gs.InputError) as caught:
        state.short_soak_limit()
    assert "gibbsteel.input.266" in str(caught.value)
    limit = state.short_soak_limit(parameters=own)
    assert limit.state.parameters_hash == own.content_hash


def test_it_goes_on_into_estimates_comparisons_reports_and_pickles(short, long_hold):
    early, late = (s.hardening(coldest_celsius=20) for s in (short, long_hold))
    assert early.martensite_start.value > late.martensite_start.value + 50
    text = str(gs.compare([long_hold, short]))
    assert "Short-soak limit: carbon has moved, metals have not" in text
    assert text.index("Long-hold limit (true") < text.index("Short-soak limit: carbon")
    assert "short-soak limit" in str(short.state.report())
    again = pickle.loads(pickle.dumps(short))
    assert again.state.occurrences == short.state.occurrences
    assert str(again) == str(short)


def test_searches_and_matches_by_the_limit():
    steel = gs.Steel(STEEL, name="52100")
    carbon = gs.quantities.short_soak_matrix("C")
    match = gs.matching_temperature(
        reference=steel.soak(celsius=865),
        steel=gs.Steel({"C": 0.95, "Mn": 1.2, "Cr": 0.5, "W": 0.5}, name="O1"),
        quantity=carbon,
        celsius=(780, 850),
    )
    found = match.search.crossings[0].celsius
    other = gs.Steel({"C": 0.95, "Mn": 1.2, "Cr": 0.5, "W": 0.5}).soak(celsius=found)
    by_limit = other.short_soak_limit().state.matrix.weight_percent["C"]
    assert by_limit == pytest.approx(match.value, abs=1e-4)
    again = pickle.loads(pickle.dumps(carbon))
    assert again.value(other) == carbon.value(other) == by_limit
    colder = gs.quantities.short_soak_matrix("C", 650)
    assert pickle.loads(pickle.dumps(colder)).value(other) == colder.value(other)
    assert colder.value(other) != by_limit

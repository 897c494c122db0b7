"""Hardening estimates go over between families of steels: whatever takes them says
so."""

import pickle

import gibbsteel as gs
import pytest

q = gs.quantities
STEEL = gs.Steel(C=1.0, Cr=5, V=2, Si=0.4, Mn=0.4, Mo=2.5, name="x")
NEAR = (
    "[gibbsteel.warning.335] The steel is near the border of its family: hardening "
    "estimates lie between those of {}. Name a family to take it alone."
)
GENERAL = NEAR.format("general (59 %) and high-speed (41 %)")
HIGH_SPEED = NEAR.format("high-speed (59 %) and general (41 %)")
BOTH = (
    "[gibbsteel.warning.357] The steels are of the families general and high-speed: "
    "their hardening estimates have offsets and errors of their own."
)
ACROSS = (
    "[gibbsteel.warning.357] Hardening estimates go over from one family of steels to "
    "the next from 2.02 to 3.18 wt% Mo (general to high-speed): that is no effect of "
    "Mo alone."
)


def told(warnings):
    texts = [str(warning) for warning in warnings]
    return [text for text in texts if "335]" in text or "357]" in text]


def flat(text):
    return " ".join(str(text).split())


def test_a_comparison_across_a_border_says_so_wherever_it_is_read():
    pair = [STEEL.changed(Mo=1.5), STEEL.changed(Mo=2.7)]
    wanted = [q.retained_austenite()]
    found = gs.compare(pair, celsius=1040, quantities=wanted)
    assert told(found.warnings) == [BOTH, HIGH_SPEED]
    assert told(found.warnings_of(0)) == [BOTH]
    assert told(found.warnings_of(1)) == [HIGH_SPEED, BOTH]
    assert "! A, B: " + BOTH in flat(found)
    assert "! B: " + HIGH_SPEED in flat(found)
    codes = list(found.to_frame()["warnings"])
    assert [c.split()[-1] for c in codes] == ["357", "357"]
    assert "335" in codes[1] and "335" not in codes[0]
    again = pickle.loads(pickle.dumps(found))
    assert told(again.warnings) == [BOTH, HIGH_SPEED]
    assert told(gs.compare(pair, celsius=1040).warnings) == []


def test_a_search_along_a_composition_says_where_the_border_is():
    found = STEEL.composition_for(
        "Mo", q.retained_austenite(), 20, percent=(1, 4), celsius=1040
    )
    assert told(found.warnings)[-1] == ACROSS
    assert "! " + ACROSS in flat(found)
    assert told(pickle.loads(pickle.dumps(found)).warnings)[-1] == ACROSS
    own = q.retained_austenite(family="general")
    found = STEEL.composition_for("Mo", own, 9, percent=(1, 4), celsius=1040)
    assert told(found.warnings) == []


def test_searches_for_temperatures_near_a_border():
    wish = STEEL.soak(celsius=1040).hardening().martensite_start.value
    near = STEEL.temperature_for(q.martensite_start(), wish, celsius=(1000, 1060))
    assert told(near.warnings) == [GENERAL]
    assert told(pickle.loads(pickle.dumps(near)).warnings) == [GENERAL]
    assert "! " + GENERAL in flat(near)
    assert GENERAL in near.to_frame().attrs["warnings"]
    other = STEEL.changed(Mo=3.6)
    match = gs.matching_temperature(
        reference=STEEL.soak(celsius=1040),
        steel=other,
        quantity=q.martensite_start(),
        celsius=(950, 1150),
    )
    assert told(match.warnings) == [BOTH]
    assert "! " + BOTH in flat(match)
    assert BOTH in match.to_frame().attrs["warnings"]


def test_a_screen_tells_of_the_border_in_the_row_and_of_families_in_the_table():
    heats = [[1.0, 5, 2, mo] for mo in (1.5, 2.5, 3.6)]
    plain = gs.screen(heats, ["C", "Cr", "V", "Mo"], celsius=1040)
    hard = gs.screen(
        heats, ["C", "Cr", "V", "Mo"], celsius=1040, quantities=[q.hardness_hrc()]
    )
    assert list(hard.warnings - plain.warnings) == [0, 1, 0]
    assert hard.families == ["general", "high-speed"]
    assert told(hard.table_warnings) == [BOTH]
    assert plain.families == [] and plain.table_warnings == []


def test_grids_designs_and_windows():
    grid = STEEL.grid(Mo=[1.5, 3.6], Si=[0.3, 0.4], celsius=1040)
    assert told(grid.warnings_of(q.hardness_hrc())) == [BOTH]
    assert told(grid.warnings_of(q.matrix("C"))) == []
    wish = gs.target(q.martensite_start(), at_least=150, celsius=1040)
    made = gs.design(STEEL, vary={"Mo": (1, 4)}, targets=[wish])
    assert told(made.warnings)[-1] == ACROSS
    assert told(pickle.loads(pickle.dumps(made)).warnings)[-1] == ACROSS
    assert "! " + ACROSS in flat(made)
    window = STEEL.hardening_window(
        hardness=q.hardness_hrc(), least_hardness=50, celsius=(950, 1100)
    )
    assert told(window.warnings) == [GENERAL]
    assert told(pickle.loads(pickle.dumps(window)).warnings) == [GENERAL]


@pytest.mark.parametrize("make", [q.martensite_start, q.hardness_hv])
def test_which_quantities_rest_on_the_family(make):
    assert make().by_family
    assert not make(family="general").by_family
    assert pickle.loads(pickle.dumps(make())).by_family
    assert not q.matrix("C").by_family


def test_the_estimates_say_which_families_they_lie_between():
    estimates = STEEL.soak(celsius=1040).hardening()
    assert estimates.family.key == "general"
    shares = estimates.family_shares
    assert list(shares) == ["general", "high-speed"]
    assert sum(shares.values()) == pytest.approx(1.0)
    assert shares["general"] == pytest.approx(0.5933, abs=1e-4)
    head = "family: between general (59 %) and high-speed (41 %), by composition"
    assert head in flat(estimates)
    assert head in flat(STEEL.soak(celsius=1040).report())
    assert "mixed by (H29); " in flat(estimates)
    again = pickle.loads(pickle.dumps(estimates))
    assert again.family_shares == shares
    alone = STEEL.soak(celsius=1040).hardening(family="general")
    assert alone.family_shares == {"general": 1.0}

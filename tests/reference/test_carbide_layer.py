"""The calibrated layer: what its page says of the records holds; what it may touch; and
the file that ships, which is the edition before with the layer on it."""

import json
from itertools import product
from pathlib import Path

import calibrate_carbides
import gibbsteel as gs
import pytest
import shipped_edition
from carbide_layer import added, data, numbers, text
from evaluate import record_file

LAYERS = Path(__file__).resolve().parents[2] / "thermo_data" / "layers"
NEW = added.added({})["phases"]
PROPERTIES = ("energy", "curie_temperature", "magnetic_moment")


@pytest.fixture(scope="module")
def layered():
    return shipped_edition.layered()


def terms_of(parameters, phase, name="energy"):
    return json.loads(gs.write_parameters(parameters))["phases"][phase].get(name, [])


def test_the_page_says_of_the_records_what_the_layer_does(layered):
    page = (LAYERS / "carbides.md").read_text("utf-8")
    assert page.startswith(calibrate_carbides.INTRODUCTION.strip())
    assert calibrate_carbides.records_part(layered) in page


def test_published_and_recalled_terms_are_untouched(layered):
    older = shipped_edition.older()
    for phase, name in product(older.phases, PROPERTIES):
        before, after = terms_of(older, phase, name), terms_of(layered, phase, name)
        changed = [b for b, a in zip(before, after) if a != b]
        assert {term["kind"] for term in changed} <= {"estimated"}, (phase, name)
        added = NEW.get(phase, {}).get(name, [])
        known = [(term["on"], term.get("order")) for term in before]
        new = [t["on"] for t in added if (t["on"], t.get("order")) not in known]
        assert [term["on"] for term in after[len(before) :]] == new, (phase, name)


def test_what_is_held_back_was_not_fitted_to():
    source = json.loads((LAYERS / "carbides.json").read_text("utf-8"))["sources"]
    used = set(source["calibration"]["fitted_to_check_records"])
    assert used == calibrate_carbides.fitted_ids()
    by_id = {r["id"]: r for r in record_file.records()}
    assert {by_id[i]["steel"] for i in used} & set(data.TEST) == set()
    by_list = {m.record for m in data.phases()} | {"systems/GL-15"}
    low = {i for i in used if by_id[i]["confidence"] == "low"}
    assert low == set() and by_list - {""} <= set(by_id)


def test_end_members_without_data_keep_their_distance(layered):
    for phase, pairs in numbers.FOLLOW.items():
        before = terms_of(shipped_edition.older(), phase)
        after = terms_of(layered, phase)
        for follower, leader in pairs.items():
            for power in ("1", "T"):
                was, now = (
                    terms[follower]["terms"].get(power, 0.0)
                    - terms[leader]["terms"].get(power, 0.0)
                    for terms in (before, after)
                )
                assert now == pytest.approx(was, rel=1e-9, abs=1e-6)


def correlation(first, second, coefficient):
    return {"between": [{"on": first}, {"on": second}], "coefficient": coefficient}


def test_correlations_are_made_smaller_only_as_far_as_they_need():
    assert text.largest_together([]) == []
    possible = [correlation("a", "b", 0.5), correlation("b", "c", -0.5)]
    kept = [c["coefficient"] for c in text.largest_together(possible)]
    assert kept == [0.5 * text.MARGIN, -0.5 * text.MARGIN]
    # Three that cannot be together: 1 - 0.9 - 0.9 is below 0.
    three = [correlation(*pair, -0.9) for pair in ("ab", "bc", "ac")]
    shrunk = [c["coefficient"] for c in text.largest_together(three)]
    assert shrunk == pytest.approx([-0.5 * text.MARGIN] * 3)
    many = [correlation(str(i), str(i + 1), 0.001 * (i + 1)) for i in range(200)]
    kept = [c["between"] for c in text.largest_together(many)]
    assert kept == [c["between"] for c in many[-text.MOST_CORRELATIONS :]]


def test_annealed_t1_holds_m23c6_and_the_uncertainty_reaches_a_band(layered):
    t1 = data.composition("hss/T1-A-phases")
    state = gs.Steel(t1, parameters=layered).soak(celsius=750)
    assert "M23C6" in state.carbides and "M7C3" not in state.carbides
    band = gs.Steel(t1, parameters=layered).parameter_band(celsius=1290)
    assert band["W in the matrix"].first_order.standard_deviation > 0.05


def parts(parameters):
    """The set as its file holds it, without what the file says of itself."""
    whole = json.loads(gs.write_parameters(parameters))
    for name in ("title", "edition"):
        del whole[name]
    return whole


def test_the_shipped_file_is_the_edition_before_with_the_layer_on_it(layered):
    shipped, composed = parts(gs.default_parameters()), parts(layered)
    assert shipped.keys() == composed.keys()
    for phase, content in composed["phases"].items():
        assert shipped["phases"][phase].keys() == content.keys()
        for kind, terms in content.items():
            assert shipped["phases"][phase][kind] == terms, (phase, kind)
    assert shipped == composed
    before = parts(shipped_edition.older())
    assert before["phases"] != composed["phases"]


def test_the_shipped_file_is_what_its_command_writes():
    assert shipped_edition.SHIPPED.read_text("utf-8") == shipped_edition.text()
    assert shipped_edition.main(["--check"]) == 0


def test_the_layer_on_the_shipped_file_changes_no_number():
    below = gs.default_parameters()
    above = gs.load_parameters(LAYERS / "carbides.json", on_top_of=below)
    assert parts(above) == parts(below)


def test_the_first_edition_is_the_file_that_shipped():
    assert shipped_edition.older().content_hash == "5f1d64709daa53ac"

"""Published values: nothing that passed may stop passing; misses stay in sight."""

import json
from collections import Counter
from fnmatch import fnmatchcase
from pathlib import Path

import gibbsteel as gs
import pytest
import scoreboard
from accuracy_page import groups, page, plots
from accuracy_page.figures import worst
from evaluate import KINDS, record_file
from evaluate.verdict import NOT_COMPUTED, PASS, judge

RECORDS = record_file.records()
FROZEN = record_file.frozen()
# Published records of the three check files, by file.
THERMO_DATA = Path(__file__).resolve().parents[2] / "thermo_data"
PUBLISHED = {"systems": 172, "coldwork": 101, "hss": 74}


@pytest.mark.parametrize("record", RECORDS, ids=lambda r: r["id"])
def test_a_frozen_record_still_passes(record, outcome_of):
    outcome = outcome_of(record)
    print(scoreboard.line(outcome))
    if record["id"] in FROZEN["passes"]:
        assert outcome.verdict == PASS, scoreboard.line(outcome)
    if record["id"] in FROZEN["computed"]:
        assert outcome.verdict != NOT_COMPUTED, scoreboard.line(outcome)


def test_every_frozen_id_is_a_record():
    known = {record["id"] for record in RECORDS}
    assert set(FROZEN["passes"]) <= set(FROZEN["computed"]) <= known


def test_records_are_well_formed():
    wrong = {r["id"]: p for r in RECORDS if (p := record_file.problems(r))}
    assert wrong == {}
    twice = [name for name, n in Counter(r["id"] for r in RECORDS).items() if n > 1]
    assert twice == []


def test_every_published_record_is_used_or_left_out_with_a_reason():
    used = {record["published_record"] for record in RECORDS}
    left_out = record_file.left_out()
    assert used & set(left_out) == set()
    assert all(isinstance(r, str) and len(r) > 10 for r in left_out.values())
    by_file = Counter(name.split("/")[0] for name in used | set(left_out))
    assert by_file == PUBLISHED


def fitted_by_the_shipped_file():
    """Patterns of the records that the sources of the file say were used up."""
    whole = json.loads(gs.write_parameters(gs.default_parameters()))
    lists = [s.get("fitted_to_check_records", []) for s in whole["sources"].values()]
    return [pattern for patterns in lists for pattern in patterns]


def is_named(record, pattern):
    """By its id or by its published record, with or without the table's name."""
    published = record["published_record"]
    names = (record["id"], published, published.partition("/")[2])
    return any(fnmatchcase(name, pattern) for name in names)


def test_what_the_file_was_fitted_to_counts_as_fitted():
    patterns = fitted_by_the_shipped_file()
    assert len(patterns) > 70
    wrong = [
        record["id"]
        for record in RECORDS
        if not record["fitted"] and any(is_named(record, p) for p in patterns)
    ]
    assert wrong == []
    unknown = [p for p in patterns if not any(is_named(r, p) for r in RECORDS)]
    assert unknown == []
    # To the others families of steels were fitted, in C++; or they were known when the
    # diffusion of timed soaks was chosen.
    others = [
        record
        for record in RECORDS
        if record["fitted"] and not any(is_named(record, p) for p in patterns)
    ]
    quenched = {r["quantity"] for r in others if r["quantity"] in groups.QUENCHED}
    assert quenched == set(groups.QUENCHED)
    of_timed_soaks = [r["id"] for r in others if r["quantity"] not in groups.QUENCHED]
    assert of_timed_soaks == ["coldwork/BRG-05:minutes", "coldwork/BRG-06:minutes"]


def test_only_a_miss_is_explained(outcome_of):
    told = [
        record["id"]
        for record in RECORDS
        if outcome_of(record).verdict == PASS
        and ("explanation" in record or "metallurgy" in record)
    ]
    assert told == []


def test_a_miss_that_is_known_says_why(outcome_of):
    silent = [
        record["id"]
        for record in RECORDS
        if outcome_of(record).verdict != PASS
        and record["id"] in FROZEN["computed"]
        and not record.get("explanation")
    ]
    assert silent == []


def test_the_accuracy_page_is_what_the_command_writes(
    outcome_of, layer_outcomes, on_iron
):
    outcomes = [outcome_of(r) for r in RECORDS]
    written = page.page(outcomes, record_file.left_out(), layer_outcomes, on_iron)
    stored = (THERMO_DATA / "ACCURACY.md").read_text(encoding="utf-8")
    assert stored.splitlines() == written.splitlines(), "run accuracy.py and read it"


def test_the_worst_misses_have_a_metallurgical_explanation(outcome_of):
    ten = worst([outcome_of(r) for r in RECORDS], page.WORST)
    assert [
        o.record["id"] for o in ten if len(o.record.get("metallurgy", "")) < 100
    ] == []


@pytest.mark.parametrize("name", plots.FILES)
def test_the_parity_plots_were_drawn_from_this_parameter_file(name):
    assert name in page.PLOTS
    picture = (THERMO_DATA / "accuracy" / name).read_bytes()
    assert plots.content().encode() in picture, "run accuracy.py and look at it"


def made_up(**changes):
    """A record about pure iron, A3 at 912 C, with changes."""
    base = next(r for r in RECORDS if r["id"] == "systems/FE-01")
    return {**base, **changes}


def test_a_wrong_published_value_is_a_miss():
    assert judge(made_up()).verdict == PASS
    outcome = judge(made_up(value=930.0))
    assert outcome.verdict == "miss"
    assert outcome.miss == pytest.approx(-18.0, abs=1.0)


def test_a_record_that_cannot_be_computed_is_told_apart_from_a_miss():
    outcome = judge(made_up(search_celsius=[100.0, 200.0]))
    assert outcome.verdict == NOT_COMPUTED
    assert outcome.remark == "no change of sign between 100 and 200"


def test_losing_a_frozen_pass_is_reported():
    outcomes = [judge(made_up(value=930.0))]
    frozen = {"passes": ["systems/FE-01"], "computed": ["systems/FE-01", "gone"]}
    lost, new = scoreboard.changes(outcomes, frozen)
    assert lost == [
        "systems/FE-01: passed when frozen, now miss",
        "gone: was computed when frozen, now not",
    ]
    assert new == []


def test_a_new_pass_is_reported():
    lost, new = scoreboard.changes([judge(made_up())], {"passes": [], "computed": []})
    assert (lost, new) == ([], ["systems/FE-01"])


@pytest.mark.parametrize(
    "comparison, value, uncertainty, computed, passes",
    [
        ("within", 10.0, 1.0, 11.0, True),
        ("within", 10.0, 1.0, 11.01, False),
        ("within", 10.0, [1.0, 3.0], 12.9, True),
        ("within", 10.0, [1.0, 3.0], 8.9, False),
        ("factor", 10.0, 1.5, 14.9, True),
        ("factor", 10.0, 1.5, 6.6, False),
        ("at_most", 10.0, 0.5, 0.0, True),
        ("at_most", 10.0, 0.5, 10.6, False),
        ("at_least", 10.0, 0.5, 9.6, True),
        ("at_least", 10.0, 0.5, 20.0, True),
        ("at_least", 10.0, 0.5, 9.4, False),
        ("between", [769.0, 788.0], None, 770.0, True),
        ("between", [769.0, 788.0], None, 789.0, False),
        ("sign", -5.0, None, -0.1, True),
        ("sign", -5.0, None, 0.0, False),
        ("phases", ["a", "b"], None, ["b", "a"], True),
        ("phases", ["a", "b"], None, ["a", "b", "c"], False),
        ("phases", ["a", "b"], None, ["a"], False),
    ],
)
def test_what_passes(monkeypatch, comparison, value, uncertainty, computed, passes):
    record = made_up(comparison=comparison, value=value, uncertainty=uncertainty)
    monkeypatch.setitem(KINDS, record["quantity"], lambda _: computed)
    assert (judge(record).verdict == PASS) is passes

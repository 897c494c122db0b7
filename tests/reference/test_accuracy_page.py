"""Counts and averages of the accuracy page, on outcomes made up by hand; the count with
the layers also on all records."""

import re
from dataclasses import replace
from math import inf, isnan
from pathlib import Path

import pytest
from accuracy_page import (
    aims,
    groups,
    hardening,
    left_out,
    markdown,
    published_records,
    with_layer,
)
from accuracy_page.figures import figures, fitted, independent, without_size, worst
from evaluate import record_file
from evaluate.verdict import Outcome
from layer_board import Board
from layer_board.board import counts
from layers import BOARDS

THERMO_DATA = Path(__file__).resolve().parents[2] / "thermo_data"


def outcome(computed, value=10.0, uncertainty=2.0, **changes):
    record = {
        "id": f"made-up/{computed}",
        "steel": "AISI M2 (HS6-5-2)",
        "quantity": "weight_percent",
        "phase": "matrix",
        "element": "W",
        "celsius": 1200,
        "comparison": "within",
        "value": value,
        "uncertainty": uncertainty,
        "fitted": False,
        "confidence": "high",
        "published_record": "made-up",
        "from_memory": False,
        **changes,
    }
    miss = (computed - value) / uncertainty if computed is not None else inf
    return Outcome(record, computed, miss, "pass" if abs(miss) <= 1.0 else "miss")


THREE = [outcome(11.0), outcome(7.0), outcome(16.0)]  # +0.5, -1.5, +3 uncertainties


def test_counts_and_averages():
    f = figures(THREE)
    assert (f.count, f.within_1, f.within_2, f.sized) == (3, 1, 2, 3)
    assert f.bias == pytest.approx((0.5 - 1.5 + 3.0) / 3)
    assert f.absolute == pytest.approx((0.5 + 1.5 + 3.0) / 3)
    assert f.in_unit == pytest.approx((1.0 + 3.0 + 6.0) / 3)


def test_a_miss_without_a_size_counts_and_is_not_averaged():
    absent = outcome(None)
    f = figures([*THREE, absent])
    assert (f.count, f.within_2, f.sized) == (4, 2, 3)
    assert f.absolute == figures(THREE).absolute
    assert without_size([*THREE, absent]) == [absent]
    assert isnan(figures([absent]).bias)


def test_a_published_record_counts_once_however_many_numbers_it_has():
    values = (11.0, 10.0, 13.0, 16.0)
    many = [outcome(value, published_record="many") for value in values]
    one = outcome(20.0, published_record="one")
    count, within_1, within_2 = published_records.counted_once([*many, one])
    assert (count, within_1, within_2) == (2, 0.5, 0.75)


def test_records_with_many_missed_numbers_are_listed_most_missed_first():
    few = [outcome(v, published_record="few") for v in (16.0, 17.0, 10.0)]
    some = [outcome(v, published_record="some") for v in (16.0, 17.0, 18.0, 10.0)]
    most = [outcome(v, published_record="most") for v in (16.0, 17.0, 18.0, 19.0)]
    listed = published_records.missed([*few, *some, *most])
    assert [(name, numbers, len(misses)) for name, numbers, misses in listed] == [
        ("most", 4, 4),
        ("some", 4, 3),
    ]


def test_fractions_are_shown_in_percent():
    amount = outcome(0.12, value=0.10, uncertainty=0.01, quantity="volume_fraction")
    assert figures([amount]).in_unit == pytest.approx(2.0)


def test_worst_and_fitted():
    used = outcome(30.0, fitted=True)
    assert [o.computed for o in worst([*THREE, used], 2)] == [30.0, 16.0]
    assert fitted([*THREE, used]) == [used]
    assert independent([*THREE, used]) == THREE


def test_aims_are_about_hardened_steels():
    annealed = outcome(11.0, celsius=750)
    pure = outcome(11.0, steel="Fe-W")
    unsure = outcome(11.0, confidence="low")
    rows = {row[0]: row for row in aims.rows([*THREE, annealed, pure, unsure])}
    _, aim, everything, free, sure = rows["W in the matrix [wt%]"]
    assert (aim, everything.count, free.count, sure.count) == (0.5, 4, 4, 3)


def start(computed, **changes):
    record = {"quantity": "martensite_start", "value": 200.0, "uncertainty": 10.0}
    return outcome(computed, **{**record, "family": "bearing", **changes})


def test_hardening_is_told_apart_by_how_the_austenite_is_known():
    known = start(212.0, austenite_wt={"C": 1.0}, explanation="Equation: because.")
    soaked = start(170.0, explanation="Chain, long-hold limit: because.")
    text = hardening.hardening_section([known, soaked])
    name = "| martensite start [C] | bearing |"
    assert f"{name} known | 1 | 12.0 | 12.0 | 0 | - | - |" in text
    assert f"{name} soaked | 1 | -30.0 | 30.0 | 0 | - | - |" in text
    assert "| Equation | 1 | `made-up/212.0` |" in text
    assert "| Chain | 1 | `made-up/170.0` |" in text


def test_a_soak_known_by_its_range_or_a_counted_carbide_is_no_part_of_the_aims():
    ranged = start(212.0, celsius_range=[800, 820], celsius=None)
    counted = start(212.0, celsius=860, measured_carbide={"M3C": 5.0})
    plain, low = start(212.0, celsius=860), start(212.0, celsius=790)
    rows = {row[0]: row for row in aims.rows([ranged, counted, plain, low])}
    assert rows["martensite start [C]"][2].count == 2


def test_every_record_has_one_family_and_one_quantity():
    records = record_file.records()
    names = [name for steels in groups.families().values() for name in steels]
    assert len(names) == len(set(names))
    assert set(names) == {record["steel"] for record in records}
    assert all(groups.quantity_of(record) for record in records)


def test_a_quantity_with_a_unit_holds_records_of_that_unit_only():
    same = {"C": "degC", "volume fraction": "fraction", "mass fraction": "fraction"}
    units = {}
    for record in record_file.records():
        group = groups.quantity_of(record)
        if groups.has_unit(group):
            unit = (
                record["unit"].split()[0] if "wt%" in record["unit"] else record["unit"]
            )
            units.setdefault(group, set()).add(same.get(unit, unit))
    mixed = {group: found for group, found in units.items() if len(found) > 1}
    assert mixed == {}


def test_numbers_as_text():
    assert markdown.number(-0.001) == "0.00"
    assert markdown.number(float("nan")) == "-"
    assert markdown.share(3, 4) == "3 of 4 (75 %)"
    assert markdown.share(0, 0) == "none"


MADE_UP = Board(
    folder=Path("made-up"),
    stem="zirconium",
    name="layer with zirconium",
    need="zirconium",
    lacking="Zr is not an element of the file.",
    meaning={},
)


def of_layer(computed, use, **changes):
    named = {"published_record": "systems/made-up", "use": use, "fitted": use == "fit"}
    return outcome(computed, **{**named, **changes})


def cells(text, name):
    """Counts of one row of the table: [(within, of), ...], and (0, 0) for "none"."""
    (line,) = [row for row in text.splitlines() if row.startswith(f"| {name} |")]
    found = [re.match(r"(\d+) of (\d+)", cell) for cell in line.split(" | ")[1:]]
    return [tuple(map(int, m.groups())) if m else (0, 0) for m in found]


def test_what_a_layer_took_over_counts_as_fitted_to_and_what_it_held_back_does_not():
    layered = [
        of_layer(11.0, "fit"),
        of_layer(13.0, "taken over", confidence="low"),
        of_layer(16.0, "held back"),
        of_layer(None, "held back"),
    ]
    both = [*THREE, outcome(12.0, fitted=True)]
    text = with_layer.section(both, [(MADE_UP, layered)])
    for name, found in {
        "shipped file": [(1, 3), (2, 3), (1, 1), (1, 1), (2, 4), (3, 4)],
        MADE_UP.name: [(0, 2), (0, 2), (1, 2), (2, 2), (1, 4), (2, 4)],
        "together": [(1, 5), (2, 5), (2, 3), (3, 3), (3, 8), (5, 8)],
        "together, confidence low": [(0, 0), (0, 0), (0, 1), (1, 1), (0, 1), (1, 1)],
    }.items():
        assert cells(text, name) == found
    assert "counts once" not in text


def test_a_number_that_both_have_counts_once_together():
    same = of_layer(30.0, "held back", published_record="made-up")
    other = of_layer(11.0, "held back", published_record="made-up", celsius=1100)
    text = with_layer.section(THREE, [(MADE_UP, [same, other])])
    assert cells(text, MADE_UP.name)[0] == (1, 2)
    assert cells(text, "together")[0] == (2, 4)
    assert text.split("\n\n")[1].endswith(" that one computes it: `made-up/30.0`.")


def test_each_layer_has_a_row_and_all_count_together():
    second = replace(MADE_UP, stem="boron", name="layer with boron")
    pairs = [
        (MADE_UP, [of_layer(11.0, "held back", value=10.1)]),
        (second, [of_layer(13.0, "held back", value=9.9), of_layer(16.0, "fit")]),
    ]
    text = with_layer.section(THREE, pairs)
    assert cells(text, MADE_UP.name)[0] == (1, 1)
    assert cells(text, second.name)[:3] == [(0, 1), (1, 1), (0, 1)]
    assert cells(text, "together")[:3] == [(2, 5), (4, 5), (0, 1)]
    assert text.split("\n\n")[1].startswith(
        "Beside the file ship the [layer with zirconium](layers/zirconium.md) with 1 "
        "records of its own and the [layer with boron](layers/boron.md) with 2 records "
        "of its own. A layer acts only where it is loaded,"
    )


@pytest.fixture(scope="module")
def shipped(outcome_of):
    return [outcome_of(r) for r in record_file.records()]


def recount(misses):
    return [(sum(abs(m) <= n for m in misses), len(misses)) for n in (1.0, 2.0)]


def page_without_iron():
    text = (THERMO_DATA / "ACCURACY.md").read_text("utf-8")
    head, rest = text.split(with_layer.IRON)
    return head + rest[rest.index("\n## ") :]


def test_the_page_counts_what_the_boards_count(shipped, layer_outcomes):
    text = page_without_iron()
    for board, judged in layer_outcomes:
        used = [counts(judged, use) for use in board.meaning if use != "held back"]
        total, one, two = map(sum, zip(*used))
        held = counts(judged, "held back")
        assert total + held[0] == len(judged)
        assert cells(text, board.name) == [
            (held[1], held[0]),
            (held[2], held[0]),
            (one, total),
            (two, total),
            *recount([o.miss for o in judged]),
        ]
    assert cells(text, "shipped file")[4:] == recount([o.miss for o in shipped])
    assert cells(text, "shipped file") == cells(text, "all")


def test_what_is_together_leaves_out_the_one_number_that_stands_twice(
    shipped, layer_outcomes
):
    text = page_without_iron()
    of_layers = [o for _, judged in layer_outcomes for o in judged]
    once = [o.miss for o in of_layers if o.record["id"] != "SP-VC-1@1000"]
    assert len(once) == len(of_layers) - 1
    together = recount([o.miss for o in shipped] + once)
    assert cells(text, "together")[4:] == together


def test_rows_by_confidence_add_up_to_what_is_together():
    text = page_without_iron()
    rows = [cells(text, f"together, confidence {c}") for c in ("high", "medium", "low")]
    added = [tuple(map(sum, zip(*parts))) for parts in zip(*rows)]
    assert added == cells(text, "together")


@pytest.mark.parametrize("board", BOARDS, ids=lambda board: board.stem)
def test_the_page_and_the_file_of_the_layer_are_there(board):
    assert board.page.is_file() and board.layer.is_file()
    assert board.page.parent == THERMO_DATA / "layers"


def test_what_a_layer_is_compared_with_is_told_apart_from_what_it_is_not():
    lacking = MADE_UP.lacking
    reasons = {
        "a": lacking,
        "b": lacking + " Because.",
        "c": "No number.",
        "d": lacking,
    }
    names = ("a", "a", "d", "c", "elsewhere")
    judged = [of_layer(11.0, "fit", published_record=name) for name in names]
    assert left_out.section(reasons, [(MADE_UP, judged)]) == (
        "## Published records that cannot be compared\n\n"
        "4 are not compared with the shipped file, 2 neither with it nor with a layer. "
        "3 of the 4 need zirconium: 2 of these are compared with the layer with "
        "zirconium, by 3 of its 5 records, and 1 are not.\n\n"
        "| records | reason | which |\n| --- | --- | --- |\n"
        f"| 2 | {lacking} Compared with the layer. | `a`, `d` |\n"
        f"| 1 | {lacking} Because. | `b` |\n"
        "| 1 | No number. | `c` |"
    )
    alone = left_out.section(reasons, [])
    assert "Compared" not in alone and f"| 2 | {lacking} | `a`, `d` |" in alone


@pytest.mark.parametrize("board", BOARDS, ids=lambda board: board.stem)
def test_a_record_that_needs_a_layer_is_compared_with_it_or_says_why_not(board):
    reasons = record_file.left_out()
    compared = {r["published_record"] for r in board.records()}
    needed = left_out.lacking(reasons, board)
    wrong = [
        name
        for name in needed
        if (name in compared) != (reasons[name].strip() == board.lacking)
    ]
    assert needed and wrong == []

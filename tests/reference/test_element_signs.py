"""Directions of cobalt, silicon, manganese and nickel; wrong ones stay in sight."""

from collections import Counter

import pytest
import signs
from element_signs import changes
from element_signs.section import signs_section

ROWS = changes.rows()


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["id"])
def test_the_direction_is_right_unless_listed_as_wrong(row):
    found = changes.change(row)
    print(changes.line(found))
    assert found.judged != ("no_carbide_now" in row), changes.line(found)
    if "wrong_now" in row:
        assert not found.right, "right now: take its `wrong_now` out of the table"
    elif found.judged:
        assert found.right, changes.line(found)


def test_rows_are_well_formed():
    wrong = {row["id"]: p for row in ROWS if (p := changes.problems(row))}
    assert wrong == {}
    assert [name for name, n in Counter(r["id"] for r in ROWS).items() if n > 1] == []
    assert set(changes.read()["reasons"]) == {row["reason"] for row in ROWS}
    assert set(changes.read()["steels"]) == {row["steel"] for row in ROWS}


@pytest.mark.parametrize("element", ["Co", "Si", "Mn", "Ni"])
@pytest.mark.parametrize("quantity", ["matrix C [wt%]", "carbide [vol%]"])
def test_each_element_is_seen_on_matrix_carbon_and_on_carbide(element, quantity):
    chosen = [r for r in ROWS if (r["element"], r["quantity"]) == (element, quantity)]
    assert len({row["steel"] for row in chosen}) >= 3


def test_a_reversed_expectation_is_wrong():
    row = dict(ROWS[0])
    assert changes.change(row).right
    assert not changes.change({**row, "sign": -row["sign"]}).right


def test_no_change_is_wrong():
    same = changes.Change(ROWS[0], 1.0, 1.0)
    assert not same.right
    up, down = (changes.Change(ROWS[0], 1.0, 1.0 + d) for d in (1e-15, -1e-15))
    assert not up.right and not down.right


def test_the_command_prints_every_row_and_the_count(capsys):
    assert signs.main([]) == 0
    printed = capsys.readouterr().out
    assert all(row["id"] in printed for row in ROWS)
    known = sum("wrong_now" in row for row in ROWS)
    judged = sum("no_carbide_now" not in row for row in ROWS)
    assert f"{judged - known} of {judged} directions right" in printed
    assert f"{len(ROWS) - judged} without carbide, not judged" in printed


def test_only_what_carbide_decides_needs_carbide():
    carbon = dict(ROWS[0], quantity="matrix C [wt%]")
    start = dict(ROWS[0], quantity="martensite start [C]")
    assert not changes.Change(carbon, 0.2, 0.2, carbide=False).judged
    assert changes.Change(carbon, 0.2, 0.2, carbide=True).judged
    assert changes.Change(start, 300.0, 300.0, carbide=False).judged


def test_a_row_without_carbide_counts_neither_as_right_nor_as_wrong():
    carbon = dict(ROWS[0], quantity="matrix C [wt%]", no_carbide_now="None.")
    text = signs_section([changes.Change(carbon, 0.2, 0.2, carbide=False)])
    assert "0 of 0 directions are right. In 1 rows neither steel" in text
    assert "| no carbide |" in text and "**wrong**" not in text


def test_a_wrong_direction_stands_on_the_page_with_its_number():
    found = [changes.Change(dict(ROWS[0], wrong_now="Because."), 1.0, 3.5)]
    text = signs_section(found)
    assert "0 of 1 directions are right" in text
    assert f"* {ROWS[0]['id']}: +2.50. Because." in text

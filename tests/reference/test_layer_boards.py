"""What holds of every layer that has records of its own: records, frozen list, page,
and that the shipped file stays as it is. Misses stay in sight: the layer's scoreboard
prints them, its page lists them."""

import json
from collections import Counter

import gibbsteel as gs
import pytest
import scoreboard
from evaluate import KINDS, library
from evaluate.verdict import MISS, NOT_COMPUTED, PASS
from layer_board import example, layer_file, page
from layer_board.board import outcomes
from layers import BOARDS

EACH = [(board, record["id"]) for board in BOARDS for record in board.records()]
KINDS_OF_TERMS = ("energy", "curie_temperature", "magnetic_moment")
WITHOUT_UNCERTAINTY = ("phases", "sign", "between")

each_board = pytest.mark.parametrize("board", BOARDS, ids=lambda board: board.stem)


@pytest.mark.parametrize("board, name", EACH, ids=[name for _, name in EACH])
def test_a_frozen_record_still_passes(board, name, outcomes_with):
    outcome = outcomes_with(board)[name]
    print(scoreboard.line(outcome))
    assert outcome.verdict != NOT_COMPUTED
    if name in board.frozen():
        assert outcome.verdict == PASS, scoreboard.line(outcome)


@each_board
def test_every_miss_says_why_and_only_misses_do(board, outcomes_with):
    silent = [
        name
        for name, outcome in outcomes_with(board).items()
        if (outcome.verdict == MISS) != ("explanation" in outcome.record)
    ]
    assert silent == []


@each_board
def test_records_are_well_formed(board):
    records = board.records()
    assert [n for n, k in Counter(r["id"] for r in records).items() if k > 1] == []
    assert set(board.frozen()) <= {r["id"] for r in records}
    for record in records:
        assert record["quantity"] in KINDS and record["use"] in board.meaning
        assert record["fitted"] == (record["use"] == "fit")
        assert len(record["source"]) > 10
        assert record["confidence"] in ("high", "medium", "low")
        assert "uncertainty" in record or record["comparison"] in WITHOUT_UNCERTAINTY


@each_board
def test_a_third_is_held_back_and_no_low_confidence_is_fitted_to(board):
    records = board.records()
    uses = Counter(r["use"] for r in records)
    assert uses["held back"] >= len(records) / 3
    fitted = [r for r in records if r["use"] == "fit"]
    assert [r["id"] for r in fitted if r["confidence"] == "low"] == []


@each_board
def test_nothing_of_the_shipped_file_is_changed(board, parameters_with):
    below = json.loads(gs.write_parameters(gs.default_parameters()))
    above = json.loads(gs.write_parameters(parameters_with(board)))
    for name, phase in below["phases"].items():
        for kind in KINDS_OF_TERMS:
            had = phase.get(kind, [])
            assert above["phases"][name].get(kind, [])[: len(had)] == had
        for kind in ("room_volume", "hot_volume"):
            for term in phase.get(kind, {}).get("terms", []):
                assert term in above["phases"][name][kind]["terms"]
    for part in ("elements", "curves", "sources"):
        assert above[part].items() >= below[part].items()
    ranges = below["validity"]["weight_percent"].items()
    assert above["validity"]["weight_percent"].items() >= ranges
    assert above["solidus_bounds"] == below["solidus_bounds"]


@each_board
def test_the_file_is_written_as_its_tool_writes_it(board, tmp_path):
    layer_file.write(layer_file.read(board.layer), tmp_path / "again.json")
    assert (tmp_path / "again.json").read_text("utf-8") == board.layer.read_text(
        "utf-8"
    )


@each_board
def test_judging_leaves_the_parameters_of_the_suite_alone(board, parameters_with):
    library.use(None)
    outcomes(board.records()[:1], parameters_with(board))
    assert library.parameters() == gs.default_parameters()


@each_board
def test_the_page_says_of_the_records_what_the_layer_does(board, outcomes_with):
    computed = page.tables(board, list(outcomes_with(board).values()))
    begin, end = page.MARKS
    whole = begin + computed + "\n" + end
    assert whole in board.page.read_text("utf-8"), "scoreboard of the layer: --page"


@each_board
def test_the_example_of_the_page_prints_what_stands_there(board):
    now, stored = example.run(board.page)
    assert now == stored

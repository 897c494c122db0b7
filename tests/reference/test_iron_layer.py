"""The layers with iron as measured: what their page says holds, what they may change,
and that the shipped file alone is as before."""

import json
from math import log10

import fit_iron
import gibbsteel as gs
import iron_layer
import iron_liquid_layer
import iron_page
import liquid_layer
import pytest
import scoreboard
from accuracy_page import with_layer
from evaluate import library, phase_temperature, record_file
from evaluate.verdict import NOT_COMPUTED, PASS
from layer_board import change, example, layer_file
from layer_board.board import LAYERS, laid, outcomes
from layer_board.page import MARKS

BOARDS = (iron_layer.BOARD, iron_liquid_layer.BOARD)
IRON = iron_layer.BOARD
each_board = pytest.mark.parametrize("board", BOARDS, ids=lambda board: board.stem)


@pytest.fixture(scope="module")
def judged():
    return iron_page.judged()


@each_board
def test_a_frozen_record_still_passes(board, outcomes_with):
    found = outcomes_with(board)
    lost = [
        scoreboard.line(found[name])
        for name in board.frozen()
        if found[name].verdict != PASS
    ]
    assert lost == [] and board.frozen()
    assert NOT_COMPUTED not in {outcome.verdict for outcome in found.values()}


def test_the_records_are_those_of_file_and_liquid_and_no_low_one_is_fitted_to():
    assert [r["id"] for r in IRON.records()] == [r["id"] for r in record_file.records()]
    melt = iron_liquid_layer.BOARD.records()
    assert [r["id"] for r in melt] == [r["id"] for r in liquid_layer.BOARD.records()]
    for board in BOARDS:
        fitted = [r for r in board.records() if r["use"] == "fit"]
        assert {r["confidence"] for r in fitted} <= {"high", "medium"}
        assert len(fitted) < len(board.records()) * 2 / 3
    assert len([r for r in IRON.records() if r["use"] == "fit"]) == len(
        iron_layer.FITTED
    )


def test_steels_and_solubilities_are_held_back():
    fitted = {r["steel"] for r in IRON.records() if r["use"] == "fit"}
    assert not [s for s in fitted if s.startswith("AISI")]
    solubility = [
        r["id"]
        for r in IRON.records()
        if r["use"] == "fit" and r["steel"].startswith("Fe-C (")
    ]
    assert solubility == ["systems/FEC-01", "systems/FEC-02"]  # the eutectoid


def test_the_page_says_what_the_layers_do(judged):
    begin, end = MARKS
    whole = begin + iron_page.tables(judged) + "\n" + end
    assert whole in IRON.page.read_text("utf-8"), "iron_scoreboard.py --page"


def test_every_lost_record_says_why_and_no_other(judged):
    lost = [r["id"] for b, a in judged for _, r in change.changed(b, a, "pass", "miss")]
    assert list(iron_page.WHY) == lost


def test_the_example_of_the_page_prints_what_stands_there():
    now, stored = example.run(IRON.page)
    assert now == stored


@each_board
def test_the_file_is_written_as_its_tool_writes_it(board, tmp_path):
    layer_file.write(layer_file.read(board.layer), tmp_path / "again.json")
    assert (tmp_path / "again.json").read_text("utf-8") == board.layer.read_text(
        "utf-8"
    )


@each_board
def test_only_what_is_fitted_differs_from_what_lies_below(board):
    below = laid([LAYERS / f"{stem}.json" for stem in board.below])
    was = json.loads(gs.write_parameters(below))
    now = json.loads(gs.write_parameters(board.parameters()))
    named = layer_file.read(board.layer)["phases"]
    for phase, content in now["phases"].items():
        before = was["phases"][phase]
        changed = [t for t in content["energy"] if t not in before["energy"]]
        wanted = [t["on"] for t in named.get(phase, {"energy": []})["energy"]]
        assert sorted(map(str, (t["on"] for t in changed))) == sorted(map(str, wanted))
        assert {t["kind"] for t in changed} <= {"estimated"}
        for part in content.keys() - {"energy"}:
            assert content[part] == before[part]
    for part in ("elements", "curves", "validity", "solidus_bounds"):
        assert now[part] == was[part]


def test_the_accuracy_page_counts_it_with_everything(on_iron):
    names = [name for name, _ in on_iron]
    assert names == [
        "shipped file",
        "layer with niobium, titanium, nitrogen",
        "layer with liquid",
    ]
    rows, again = with_layer.added_up([(n, with_layer.counted(j)) for n, j in on_iron])
    assert [o.record["id"] for o in again] == ["SP-VC-1@1000"]
    assert [row[0] for row in rows[3:]] == [
        "together",
        *(f"together, confidence {c}" for c in ("high", "medium", "low")),
    ]
    total = sum(len(j) for _, j in on_iron) - 1
    passed = sum(o.verdict == PASS for _, j in on_iron for o in j)
    assert rows[3][5].startswith(f"{passed} of {total} ")


def test_what_it_was_fitted_to_counts_as_fitted_to(on_iron):
    _, judged = on_iron[0]
    fitted = {o.record["id"] for o in with_layer.counted(judged) if o.record["fitted"]}
    file = {r["id"] for r in record_file.records() if r["fitted"]}
    assert fitted == file | set(iron_layer.FITTED)


def test_activity_of_carbon_follows_an_equation_that_it_was_not_fitted_to():
    """log10 a = 2300/T - 0.92 + 3860/T y + log10(y/(1 - y)), y = x(C)/x(Fe), austenite.

    Ban-ya, Elliott and Chipman, Metall. Trans. 1 (1970) 1313, from memory; at 1050 C,
    between the temperatures that the layer was fitted at. Their scatter is 3 %.
    """
    kelvin = 1050.0 + 273.15
    for carbon in (0.3, 0.7, 1.1, 1.5):
        y = carbon / 12.011 / ((100.0 - carbon) / 55.845)
        expected = 2300 / kelvin - 0.92 + 3860 / kelvin * y + log10(y / (1 - y))
        activity = [
            gs.Steel({"C": carbon}, parameters=p)
            .soak(celsius=1050, phases=["austenite"])
            .carbon_activity
            for p in (IRON.parameters(), laid([]))
        ]
        assert activity[0] == pytest.approx(10**expected, rel=0.03)
        assert activity[1] / 10**expected > 1.03  # without the layer it is too active


def test_the_eutectoid_stays_where_it_is():
    """727 C and 0.77 % C: handbooks, as records FEC-01 and FEC-02."""
    eutectoid = {"composition_wt": {"C": 0.77}, "search_celsius": [700, 760]}
    with library.using(IRON.parameters()):
        appears = phase_temperature.appears({**eutectoid, "phase": "austenite"})
    assert appears == pytest.approx(727.0, abs=1.5)


def test_without_the_melt_that_goes_with_it_cast_iron_melts_too_high():
    """Which is why default_parameters lays it on top: the eutectic is 1148 C."""
    apart = laid([liquid_layer.BOARD.layer, IRON.layer])
    together = iron_liquid_layer.BOARD.parameters()
    assert together == gs.default_parameters("liquid", "iron_as_measured")
    solidus = [
        gs.Steel({"C": 4.3}, parameters=p).melting_range().solidus_celsius
        for p in (together, apart)
    ]
    assert solidus[0] == pytest.approx(1148.0, abs=2.0)
    assert solidus[1] > 1151.0


def test_a_wrong_number_would_be_seen(tmp_path):
    layer = layer_file.read(IRON.layer)
    on = ("Fe", ("C", "vacancy"))
    fit_iron.FIT.term_of(layer, "austenite", on, "1")["terms"]["1"] += 1500.0
    layer_file.write(layer, tmp_path / "wrong.json")
    wrong = IRON.parameters(tmp_path / "wrong.json")
    fitted = [r for r in IRON.records() if r["use"] == "fit"]
    passed = {o.record["id"] for o in outcomes(fitted, wrong) if o.verdict == PASS}
    assert len(passed & set(IRON.frozen())) < 20

"""Prints the scoreboard at the end of the run, however pytest was called."""

import pytest
import scoreboard
from evaluate import record_file
from evaluate.verdict import PASS, judge
from layer_board.board import outcomes
from layers import BOARDS
from layers import on_iron as judged_on_iron

_OUTCOMES = {}


@pytest.fixture(scope="session")
def outcome_of():
    """Function from a record to its outcome; each record is computed once."""

    def outcome(record):
        if record["id"] not in _OUTCOMES:
            _OUTCOMES[record["id"]] = judge(record)
        return _OUTCOMES[record["id"]]

    return outcome


@pytest.fixture(scope="session")
def parameters_with():
    """Function from the board of a layer to the layer on the shipped file."""
    loaded = {}

    def parameters(board):
        if board.stem not in loaded:
            loaded[board.stem] = board.parameters()
        return loaded[board.stem]

    return parameters


@pytest.fixture(scope="session")
def outcomes_with(parameters_with):
    """Function from the board of a layer to the outcomes of its records, by id."""
    judged = {}

    def outcomes_of(board):
        if board.stem not in judged:
            found = outcomes(board.records(), parameters_with(board))
            judged[board.stem] = {o.record["id"]: o for o in found}
        return judged[board.stem]

    return outcomes_of


@pytest.fixture(scope="session")
def layer_outcomes(outcomes_with):
    """(board, outcomes) of each layer."""
    return [(board, list(outcomes_with(board).values())) for board in BOARDS]


@pytest.fixture(scope="session")
def on_iron():
    """(name, outcomes) of the file and each layer, on iron as measured."""
    return judged_on_iron()


def pytest_terminal_summary(terminalreporter):
    if not _OUTCOMES:
        return
    judged = list(_OUTCOMES.values())
    terminalreporter.section("published values")
    terminalreporter.write_line(scoreboard.HEADER)
    for outcome in judged:
        terminalreporter.write_line(scoreboard.line(outcome))
    terminalreporter.write_line(scoreboard.counts(judged))
    frozen = record_file.frozen()["passes"]
    for outcome in judged:
        if outcome.verdict == PASS and outcome.record["id"] not in frozen:
            name = outcome.record["id"]
            terminalreporter.write_line(f"{name}: passes now, freeze it")

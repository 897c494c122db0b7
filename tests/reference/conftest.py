"""Prints the scoreboard at the end of the run, however pytest was called."""

import pytest
import scoreboard
from element_layer import board
from evaluate import record_file
from evaluate.verdict import PASS, judge

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
def layered():
    """The layer with niobium, titanium and nitrogen on the shipped file."""
    return board.parameters()


@pytest.fixture(scope="session")
def layer_outcomes(layered):
    return board.outcomes(board.records(), layered)


def pytest_terminal_summary(terminalreporter):
    if not _OUTCOMES:
        return
    outcomes = list(_OUTCOMES.values())
    terminalreporter.section("published values")
    terminalreporter.write_line(scoreboard.HEADER)
    for outcome in outcomes:
        terminalreporter.write_line(scoreboard.line(outcome))
    terminalreporter.write_line(scoreboard.counts(outcomes))
    frozen = record_file.frozen()["passes"]
    for outcome in outcomes:
        if outcome.verdict == PASS and outcome.record["id"] not in frozen:
            name = outcome.record["id"]
            terminalreporter.write_line(f"{name}: passes now, freeze it")

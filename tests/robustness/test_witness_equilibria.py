"""Random steels by the library and by the witness: who finds the lower Gibbs energy?

The witness (folder witness) is written with NumPy and SciPy alone, straight from the
parameter file: a linear program on samples of every phase, local minimizations of the
tangent-plane distance, and a general root finder. It prints what it found.

The environment variable GIBBSTEEL_WITNESS_CASES sets the number of conditions; without
it, few enough for every day.
"""

import os

import pytest

from witness.comparison import ENERGY, compare, summary

CASES = int(os.environ.get("GIBBSTEEL_WITNESS_CASES", "40"))


@pytest.fixture(scope="module")
def comparisons():
    return [compare(case) for case in range(CASES)]


def test_summary(comparisons, capsys):
    assert len(comparisons) == CASES > 0
    with capsys.disabled():
        print("\n" + summary(comparisons))


def test_the_library_never_lies_above_the_witness(comparisons):
    assert [c.line() for c in comparisons if c.library_above] == []


def test_the_library_gives_up_on_at_most_one_in_a_hundred(comparisons):
    flagged = [c.line() for c in comparisons if not c.usable]
    assert len(flagged) <= CASES / 100, flagged


def test_the_witness_stops_short_in_at_most_one_in_fifty(comparisons):
    short = [c.line() for c in comparisons if c.witness_above]
    assert len(short) <= CASES / 50, short


def test_where_the_witness_stops_short_its_own_bound_says_so(comparisons):
    """Otherwise the library would be below what is possible: its energy would be wrong."""
    short = [c for c in comparisons if c.witness_above]
    unexplained = [c.line() for c in short if -c.energy_above > c.gap + ENERGY]
    assert unexplained == []


def test_where_the_energy_is_the_same_the_phases_and_amounts_are(comparisons):
    differing = [c.line() for c in comparisons if c.same_energy and not c.same_phases]
    assert differing == []


@pytest.mark.parametrize("phase", ["M6C", "M7C3", "M3C"])
def test_a_library_without_a_phase_that_belongs_there_is_found_out(phase):
    """The comparison can fail: the library is told to leave one phase out."""
    present = {"M6C": 1, "M7C3": 9, "M3C": 4}
    found = compare(present[phase], suppressed=[phase])
    assert found.usable and found.library_above
    assert phase in found.only_witness

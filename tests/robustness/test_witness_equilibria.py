"""Random steels by the library and by the witness: who finds the lower Gibbs energy?

The witness (folder witness) is written with NumPy and SciPy alone, straight from the
parameter file: a linear program on samples of every phase, local minimizations of the
tangent-plane distance, and a general root finder. It prints what it found.

The environment variable GIBBSTEEL_WITNESS_CASES sets the number of conditions; without
it, few enough for every day.
"""

import os

import pytest

from witness.comparison import compare, summary

CASES = int(os.environ.get("GIBBSTEEL_WITNESS_CASES", "40"))
RECOMPUTED = 1e-6  # J/mol of atoms
BALANCE = 1e-8  # relative


@pytest.fixture(scope="module")
def comparisons():
    return [compare(case) for case in range(CASES)]


def test_summary(comparisons, capsys):
    with capsys.disabled():
        print("\n" + summary(comparisons))
    kinds = [
        (c.same_energy, c.library_above, c.witness_above, not c.usable)
        for c in comparisons
    ]
    assert len(kinds) == CASES > 0
    assert all(sum(kind) == 1 for kind in kinds)


def test_the_library_never_lies_above_the_witness(comparisons):
    assert [c.line() for c in comparisons if c.library_above] == []


def test_the_library_gives_up_on_at_most_one_in_a_hundred(comparisons):
    flagged = [c.line() for c in comparisons if not c.usable]
    assert len(flagged) <= CASES / 100, flagged


def test_the_witness_stops_short_in_at_most_one_in_fifty(comparisons):
    short = [c.line() for c in comparisons if c.witness_above]
    assert len(short) <= CASES / 50, short


def test_the_witness_confirms_the_energy_of_every_mixture_of_the_library(comparisons):
    """It explains where the witness stops short: the lower energy can be had."""
    usable = [c for c in comparisons if c.usable]
    assert max(abs(c.recomputed) for c in usable) <= RECOMPUTED
    assert max(c.balance for c in usable) <= BALANCE


def test_where_the_energy_is_the_same_all_the_rest_is(comparisons):
    """Phases, amounts and chemical potentials."""
    assert [c.line() for c in comparisons if c.same_energy and not c.same] == []


@pytest.mark.parametrize("case, phase", [(1, "M6C"), (9, "M7C3"), (8, "M3C")])
def test_a_library_without_a_phase_that_belongs_there_is_found_out(case, phase):
    """The comparison can fail: the library is told to leave one phase out."""
    found = compare(case, suppressed=[phase])
    assert found.usable and found.library_above
    assert phase in found.only_witness

"""Random steels that melt, by the library and by the witness.

As test_witness_equilibria.py, with the layer that adds liquid, from below most solidus
to above most liquidus temperatures. It runs a few conditions, or as many as
GIBBSTEEL_WITNESS_CASES says.
"""

import os
from pathlib import Path

import gibbsteel as gs
import pytest

from witness.comparison import compare, summary

CASES = int(os.environ.get("GIBBSTEEL_WITNESS_CASES", "12"))
LAYERS = Path(__file__).resolve().parents[2] / "thermo_data" / "layers"
BAND = (1200.0, 1540.0)  # [C]


@pytest.fixture(scope="module")
def with_liquid():
    return gs.load_parameters(LAYERS / "liquid.json", on_top_of=gs.default_parameters())


@pytest.fixture(scope="module")
def comparisons(with_liquid):
    return [compare(case, with_liquid, band=BAND) for case in range(CASES)]


def test_nothing_is_silently_wrong(comparisons, capsys):
    with capsys.disabled():
        print("\n" + summary(comparisons))
    assert [c.line() for c in comparisons if c.library_above] == []
    assert [c.line() for c in comparisons if c.same_energy and not c.same] == []


def test_the_library_gives_up_on_at_most_one_in_fifty(comparisons):
    assert sum(not c.usable for c in comparisons) <= CASES / 50


def test_the_comparison_can_fail(with_liquid):
    found = compare(4, with_liquid, band=BAND, suppressed=["liquid"])
    assert found.usable and found.library_above

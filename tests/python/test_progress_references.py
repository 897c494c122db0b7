"""The library may copy a progress function: Python's reference count is not its to use.

It copies while other threads of Python run, so a count of every copy would race.
"""

import sys

import gibbsteel as gs
from gibbsteel import _core
from gibbsteel.soak_options import soak_options

SOAK = soak_options(False, None, (), False, None)
KELVIN = 1373.15


class Counting:
    """Notes how many references there are to itself while it is called."""

    def __init__(self):
        self.seen = set()

    def __call__(self, done):
        self.seen.add(sys.getrefcount(self))


def works(steel):
    """Calls of the compiled part, all in the same way; a grid makes no copy."""
    carbon = gs.quantities.matrix("C")
    search = gs.SearchOptions(most_soaks=30)
    at = (1273.15, KELVIN)
    first = gs.SweptVariable(element="C", weight_percent=[0.5, 0.6])
    second = gs.SweptVariable(element="Cr", weight_percent=[4.0, 5.0])
    sampling = _core.ToleranceOptions(SOAK, 8, 1, [50.0], False, "scaled", 1)
    scatter = _core.HeatTolerances(
        ranges=[("C", 0.5, 0.6)],
        standard_deviations={},
        furnace_error=0.0,
        segregation_percent=0.0,
    )
    return [
        lambda told: _core.soak_grid(steel, first, second, KELVIN, SOAK, told),
        lambda told: _core.temperature_for(steel, carbon, 0.5, at, SOAK, search, told),
        lambda told: _core.phase_changes(steel, at, SOAK, search, told),
        lambda told: _core.composition_for(
            steel, "C", carbon, 0.5, 0.4, 0.6, KELVIN, SOAK, 4, 1e-4, 30, told
        ),
        lambda told: _core.tolerance_band(
            steel, KELVIN, scatter, [carbon], sampling, told
        ),
        lambda told: _core.parameter_band(
            steel, KELVIN, [carbon], SOAK, 8, 1, [50.0], 1, told
        ),
    ]


def test_copies_in_the_library_take_no_reference(punch):
    seen = []
    for work in works(punch._core):
        told = Counting()
        before = sys.getrefcount(told)
        work(told)
        assert sys.getrefcount(told) == before
        seen.append(told.seen)
    assert all(len(counts) == 1 and counts == seen[0] for counts in seen), seen

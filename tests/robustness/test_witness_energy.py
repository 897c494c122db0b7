"""The library's phase energies against NumPy, straight from the parameter file.

Source of the check: the equations of the papers that DEVELOPERS.md lists under (G1) to
(G7), written down a second time in tests/robustness/witness.
"""

import gibbsteel as gs
import numpy as np
import pytest

from witness.parameter_file import SHIPPED, shipped
from witness.phase_energy import PhaseEnergy
from witness.random_steels import draw

POINTS = 60


def random_points(phase, random):
    """Site fractions from well mixed to nearly pure, and with exact zeros."""
    points = np.empty((POINTS, phase.size))
    for part in phase.sublattices:
        shape = 10.0 ** random.uniform(-1.5, 0.5, POINTS)
        for k in range(POINTS):
            weights = random.gamma(shape[k], size=part.stop - part.start)
            weights[weights < 1e-30] = 0.0
            points[k, part] = weights / weights.sum() if weights.any() else 0.0
            points[k, part.start] += 1.0 - points[k, part].sum()
    return points


def test_the_witness_reads_the_file_that_the_library_uses():
    assert gs.load_parameters(SHIPPED) == gs.default_parameters()


@pytest.mark.parametrize("name", list(shipped()["phases"]))
def test_energy_from_the_file(name):
    """1e-9 of the larger of |G| and RT per formula unit."""
    random = np.random.default_rng(7)
    parameters = gs.default_parameters()
    compared, worst = 0, 0.0
    for case in range(25):
        percent, celsius = draw(shipped(), case)
        kelvin = celsius + 273.15
        phase = PhaseEnergy(shipped(), name, list(percent), kelvin)
        model = parameters.phase_model(name, elements=list(percent))
        assert phase.reachable == model.reachable
        if not phase.reachable:
            continue
        theirs = [(c.sublattice, c.name) for c in model.constituents]
        order = [phase.constituents.index(c) for c in theirs]
        points = random_points(phase, random)
        for y, ours in zip(points, phase.value(points)):
            energy = model.gibbs_energy(kelvin=kelvin, site_fractions=y[order])
            worst = max(worst, abs(ours - energy) / max(abs(energy), phase.rt))
            compared += 1
    print(f"{name}: {compared} energies, largest relative difference {worst:.1e}")
    assert compared > 0
    assert worst <= 1e-9


@pytest.mark.parametrize("name", list(shipped()["phases"]))
def test_derivatives_of_the_witness(name):
    """Its gradient against complex steps of its own energy."""
    random = np.random.default_rng(8)
    elements = ["Fe", *shipped()["validity"]["weight_percent"]]
    phase = PhaseEnergy(shipped(), name, elements, 1273.15)
    points = 0.9 * random_points(phase, random) + 0.1 / phase.size
    for y in points:
        stepped = y + 1e-30j * np.eye(phase.size)
        by_steps = phase.value(stepped).imag / 1e-30
        assert phase.gradient(y) == pytest.approx(by_steps, rel=1e-10, abs=1e-6)
        hessian = phase.hessian(y)
        assert hessian == pytest.approx(hessian.T, rel=1e-9, abs=1e-5)

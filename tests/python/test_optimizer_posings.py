"""The optimizers of benchmarks/compare_optimizers are given right derivatives: against
central differences, and the library's own answer has its energy in both posings."""

import sys
from pathlib import Path

import gibbsteel as gs
import numpy as np
import pytest

pytest.importorskip("scipy")  # not needed by anything else here
FOLDER = Path(__file__).parents[2] / "benchmarks" / "compare_optimizers"
ELEMENTS = ["Fe", "C", "Cr", "Mo", "V"]
FRACTIONS = [0.86, 0.04, 0.05, 0.03, 0.02]
KELVIN = 1400.0


@pytest.fixture(scope="module")
def posings():
    sys.path.insert(0, str(FOLDER))
    try:
        import posings as module
    finally:
        sys.path.remove(str(FOLDER))
    return module


@pytest.fixture(scope="module")
def answer():
    return gs.minimize(ELEMENTS, FRACTIONS, KELVIN)


@pytest.fixture(scope="module")
def task(posings, answer):
    phases = [name for name in gs.default_parameters().phases if name != "graphite"]
    sets = [
        {
            "phase": phases.index(point["phase"]),
            "amount": point["amount"],
            "y": list(point["site_fractions"]),
        }
        for point in answer.present
    ]
    return posings.Task(
        "test", ELEMENTS, FRACTIONS, KELVIN, phases, [], naive=sets, warm=sets
    )


def differences(function, x):
    """Central differences, one row per variable."""
    rows = []
    for i in range(len(x)):
        step = np.zeros_like(x)
        step[i] = 1e-5 * max(abs(x[i]), 1e-3)
        rows.append((function(x + step) - function(x - step)) / (2.0 * step[i]))
    return np.array(rows)


@pytest.mark.parametrize("name", ["AmountsPosing", "LogitsPosing"])
def test_energy_is_the_one_of_the_answer(posings, task, answer, name):
    posing = getattr(posings, name)(task, task.models(), task.warm)
    energy, _ = posing.energy(posing.start())
    assert energy * posing.rt == pytest.approx(answer.gibbs_energy, rel=1e-12)


def moved(posing):
    """Not an equilibrium: larger amounts, site fractions nearer to the middle."""
    for entry in posing.sets:
        assert entry["amount"] > 0.0
    sets = [
        entry | {"amount": 0.1, "y": [0.8 * y + 0.1 for y in entry["y"]]}
        for entry in posing.sets
    ]
    return type(posing)(posing.task, posing.task.models(), sets)


@pytest.mark.parametrize("name", ["AmountsPosing", "LogitsPosing"])
def test_gradient_of_energy(posings, task, name):
    posing = moved(getattr(posings, name)(task, task.models(), task.warm))
    x = posing.start()
    found = posing.energy(x)[1]
    assert found == pytest.approx(
        differences(lambda v: posing.energy(v)[0], x), rel=1e-6, abs=1e-7
    )


def test_hessian_of_amounts(posings, task):
    posing = moved(posings.AmountsPosing(task, task.models(), task.warm))
    x = posing.start()
    found = posing.hessian(x).toarray()
    expected = differences(lambda v: posing.energy(v)[1], x)
    assert found == pytest.approx(expected, rel=1e-5, abs=1e-5)


def test_balance_of_amounts(posings, task):
    posing = posings.AmountsPosing(task, task.models(), task.warm)
    matrix, right = posing.constraints()
    assert matrix @ posing.start() == pytest.approx(right, abs=1e-12)


def test_balance_of_logits_and_its_gradient(posings, task):
    posing = posings.LogitsPosing(task, task.models(), task.warm)
    x = posing.start()
    assert posing.balance(x) == pytest.approx(np.zeros(len(ELEMENTS)), abs=1e-12)
    away = moved(posing)
    x = away.start()
    expected = differences(away.balance, x).T
    assert away.balance_gradient(x) == pytest.approx(expected, rel=1e-6, abs=1e-9)

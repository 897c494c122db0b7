"""The fit behind the rule of warning 336 finds a line that is known."""

import cementite_rule
import numpy as np
import pytest


def test_a_known_line_is_found():
    random = np.random.default_rng(3)
    composition = random.uniform(0.3, 1.5, (4000, 2))
    celsius = random.uniform(700.0, 1000.0, 4000)
    rows = np.column_stack([np.ones(4000), composition, celsius])
    line = rows[:, :3] @ [500.0, 200.0, 150.0]
    kept = celsius < line + random.normal(0.0, 5.0, 4000)
    w = cementite_rule.fitted(rows, kept)
    assert -w[:-1] / w[-1] == pytest.approx([500.0, 200.0, 150.0], abs=4.0)


def test_runs_separate_and_carbon_raises_the_line():
    rows, kept = cementite_rule.runs(40)
    assert 40 < len(kept) < 120 and 0 < kept.sum() < len(kept)
    w = cementite_rule.fitted(rows, kept)
    assert np.mean((rows @ w > 0.0) != kept) < 0.1
    assert -w[1] / w[-1] > 100.0  # C for each wt% of carbon

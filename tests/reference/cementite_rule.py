#!/usr/bin/env python3
"""Prints how the rule of warning 336 follows from short-soak limits of random steels.

    python3 cementite_rule.py              some minutes at most
    python3 cementite_rule.py --steels N   fewer or more of them

Where the limit leaves cementite that a long hold dissolves (0.01 wt% C of it and more)
is separated from where it does not by a line in composition and temperature (logistic
regression, by Newton steps). `src/internal/cementite_rule.cpp` has its coefficients,
rounded; `tests/unit/cementite_rule_test.cpp` holds them to other steels and to grades.
gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

import argparse

import gibbsteel as gs
import numpy as np

# Mo and W, which the steels hold too, came out at next to nothing.
NAMES = ("constant", "C", "Cr", "Cr/C", "Mn", "Si", "V", "Ni")
LEFT = 0.01  # [wt%] carbon in cementite that a long hold dissolves
SEED = 20261127


def steels(random, count):
    """Low-alloy steels whose annealed carbide may be cementite."""
    for _ in range(count):
        steel = {
            "C": random.uniform(0.3, 1.5),
            "Mn": random.uniform(0.2, random.choice([0.6, 2.2])),
            "Si": random.uniform(0.1, random.choice([0.5, 2.0])),
        }
        shares = {"Cr": (0.75, 3.0), "Ni": (0.4, 4.0), "V": (0.4, 0.6)}
        shares |= {"Mo": (0.3, 0.6), "W": (0.2, 4.0)}
        for symbol, (share, most) in shares.items():
            if random.random() < share:
                steel[symbol] = random.uniform(0.05, most)
        yield steel


def left(steel, celsius):
    """Whether the limit leaves carbide that a long hold dissolves; None: no limit."""
    state = gs.Steel(steel).soak(celsius=celsius, suppressed="hexagonal MC")
    try:
        soak = state.short_soak_limit()
    except gs.InputError:
        return None
    if soak.state.volume_percent_of("M3C") == 0.0:
        return False
    long_hold = state.matrix.weight_percent["C"]
    return bool(long_hold - soak.state.matrix.weight_percent["C"] > LEFT)


def runs(count):
    """(rows of composition and temperature, whether carbide is left)."""
    random = np.random.default_rng(SEED)
    rows, kept = [], []
    for steel in steels(random, count):
        for celsius in random.uniform(750.0, 1000.0, 3):
            found = left(steel, celsius)
            if found is None:
                continue
            part = [steel.get(symbol, 0.0) for symbol in ("C", "Cr")]
            part += [part[1] / part[0]]
            part += [steel.get(s, 0.0) for s in ("Mn", "Si", "V", "Ni")]
            rows.append([1.0, *part, celsius])
            kept.append(found)
    return np.array(rows), np.array(kept)


def fitted(rows, kept, rounds=60):
    """Coefficients of the logistic line; a trace of ridge keeps it finite."""
    scale = np.abs(rows).max(axis=0)
    x = rows / scale
    w = np.zeros(x.shape[1])
    for _ in range(rounds):
        p = 1.0 / (1.0 + np.exp(-np.clip(x @ w, -40.0, 40.0)))
        hessian = x.T * (p * (1.0 - p)) @ x + 1e-3 * np.eye(len(w))
        w += np.linalg.solve(hessian, x.T @ (kept - p) - 1e-3 * w)
    return w / scale


def main(arguments=None):
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--steels", type=int, default=1200)
    rows, kept = runs(parser.parse_args(arguments).steels)
    w = fitted(rows, kept)
    wrong = np.mean((rows @ w > 0.0) != kept)
    print(f"{len(kept)} soaks, {kept.sum()} with carbide left,", end=" ")
    print(f"{100 * wrong:.1f} % wrong")
    for name, value in zip(NAMES, -w[:-1] / w[-1], strict=True):
        print(f"{name:9s} {value:8.1f}")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())

#!/usr/bin/env python3
"""Fits the numbers of the niobium, titanium and nitrogen layer that say so.

    python3 tests/reference/fit_elements.py           # prints the fit, changes nothing
    python3 tests/reference/fit_elements.py --write   # writes the numbers to the layer

Least squares over the records of element_layer/records.json whose `use` is "fit", each
miss in its own uncertainty, with a wide prior around the start, so that what the
records do not see stays where it is. Half a minute.
"""

import argparse
import tempfile
from math import inf
from pathlib import Path

import numpy as np
from element_layer import BOARD
from layer_board import layer_file
from layer_board.board import outcomes
from scipy.optimize import least_squares

# (phase, on, power): start and standard deviation of the prior [J/mol, J/(mol K)].
START = {
    ("austenite", (("Fe", "Nb"), "vacancy"), "1"): (0.0, 40000.0),
    ("austenite", (("Fe", "Nb"), "vacancy"), "T"): (0.0, 10.0),
    ("austenite", (("Fe", "Ti"), "vacancy"), "1"): (-40000.0, 40000.0),
    ("austenite", (("Fe", "Ti"), "vacancy"), "T"): (0.0, 10.0),
    ("austenite", ("V", "N"), "1"): (-217100.0, 4000.0),
    ("ferrite", (("Fe", "Nb"), "vacancy"), "1"): (0.0, 40000.0),
    ("ferrite", (("Fe", "Ti"), "vacancy"), "1"): (-40000.0, 40000.0),
}
SMALLEST = 0.02  # a correlation below this is left out
FAR = 20.0  # [uncertainties] the miss of a record that has no computed value


def term_of(layer, phase, on):
    wanted = [list(entry) if isinstance(entry, tuple) else entry for entry in on]
    terms = layer["phases"][phase]["energy"]
    (term,) = [t for t in terms if t["on"] == wanted and not t.get("order")]
    return term


def put(layer, numbers):
    for (phase, on, power), value in zip(START, numbers):
        term_of(layer, phase, on)["terms"][power] = round(float(value), 3)
    return layer


def fitted_ids():
    return [r["id"] for r in BOARD.records() if r["use"] == "fit"]


def put_uncertainty(layer, covariance):
    """Standard deviations of the terms, correlations, and what was fitted to."""
    layer["sources"]["Nb-Ti-N fit"]["fitted_to_check_records"] = fitted_ids()
    deviations = np.sqrt(np.diag(covariance))
    keys = []
    for (phase, on, power), deviation in zip(START, deviations):
        term = term_of(layer, phase, on)
        term.setdefault("standard_deviations", {})[power] = float(f"{deviation:.4g}")
        key = {"phase": phase, "property": "energy", "on": term["on"]}
        order = {"order": term["order"]} if "order" in term else {}
        keys.append({**key, **order, "power": power})
    r = covariance / np.outer(deviations, deviations)
    layer["correlations"] = [
        {
            "between": [keys[i], keys[k]],
            "coefficient": round(float(r[i, k]), 4),
            "source": "Nb-Ti-N fit",
            "kind": "estimated",
        }
        for i in range(len(keys))
        for k in range(i + 1, len(keys))
        if abs(r[i, k]) >= SMALLEST
    ]
    return layer


def misses(numbers, records):
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / BOARD.layer.name
        layer_file.write(put(layer_file.read(BOARD.layer), numbers), file)
        judged = outcomes(records, BOARD.parameters(file))
    return np.array([FAR if abs(o.miss) == inf else o.miss for o in judged])


def fit(numbers=None, steps=None):
    """(numbers, covariance, result) from the start, or from these numbers."""
    records = [r for r in BOARD.records() if r["use"] == "fit"]
    start, spread = np.array(list(START.values())).T
    first = start if numbers is None else np.array(numbers)

    def residuals(x):
        shift = x - 1.0  # steps of the optimizer are relative, hence not around 0
        return np.concatenate([misses(start + spread * shift, records), shift])

    found = least_squares(
        residuals, 1.0 + (first - start) / spread, diff_step=3e-3, max_nfev=steps
    )
    covariance = np.linalg.inv(found.jac.T @ found.jac) * np.outer(spread, spread)
    return start + spread * (found.x - 1.0), covariance, found


def distance(layer):
    """How far the numbers of the layer are from the minimum, in standard deviations.

    By one Gauss-Newton step.
    """
    numbers = [term_of(layer, p, on)["terms"][power] for p, on, power in START]
    _, _, found = fit(numbers, steps=1)
    step = np.linalg.solve(found.jac.T @ found.jac, found.grad)
    return float(np.linalg.norm(found.jac @ step))


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--write", action="store_true", help="change the layer")
    options = parser.parse_args()
    numbers, covariance, found = fit()
    deviations = np.sqrt(np.diag(covariance))
    for (phase, on, power), value, deviation in zip(START, numbers, deviations):
        print(f"{phase:<10} {str(on):<28} {power:<3} {value:12.3f} +- {deviation:.3f}")
    print(f"{found.nfev} steps, {found.message}")
    if options.write:
        layer = put_uncertainty(put(layer_file.read(BOARD.layer), numbers), covariance)
        layer_file.write(layer, BOARD.layer)


if __name__ == "__main__":
    main()

#!/usr/bin/env python3
"""Fits the numbers of the niobium, titanium and nitrogen layer that say so.

    python3 tests/reference/fit_elements.py           # prints the fit, changes nothing
    python3 tests/reference/fit_elements.py --write   # writes the numbers to the layer

Least squares over the records of element_layer/records.json whose `use` is "fit", each
miss in its own uncertainty, with a wide prior around the start, so that what the records
do not see stays where it is. A minute.
"""

import argparse
import tempfile
from math import inf
from pathlib import Path

import numpy as np
from element_layer import board, layer_file
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
FAR = 20.0  # [uncertainties] the miss of a record that has no computed value


def put(layer, numbers):
    for (phase, on, power), value in zip(START, numbers):
        wanted = [list(entry) if isinstance(entry, tuple) else entry for entry in on]
        terms = layer["phases"][phase]["energy"]
        (term,) = [t for t in terms if t["on"] == wanted and not t.get("order")]
        term["terms"][power] = round(float(value), 3)
    return layer


def misses(numbers, records):
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / board.LAYER.name
        layer_file.write(put(layer_file.read(), numbers), file)
        judged = board.outcomes(records, board.parameters(file))
    return np.array([FAR if abs(o.miss) == inf else o.miss for o in judged])


def fit():
    records = [r for r in board.records() if r["use"] == "fit"]
    start, spread = np.array(list(START.values())).T

    def residuals(x):
        shift = x - 1.0  # steps of the optimizer are relative, hence not around 0
        return np.concatenate([misses(start + spread * shift, records), shift])

    found = least_squares(residuals, np.ones(len(start)), diff_step=3e-3)
    deviations = spread * np.sqrt(np.diag(np.linalg.inv(found.jac.T @ found.jac)))
    return start + spread * (found.x - 1.0), deviations, found


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--write", action="store_true", help="change the layer")
    options = parser.parse_args()
    numbers, deviations, found = fit()
    for (phase, on, power), value, deviation in zip(START, numbers, deviations):
        print(f"{phase:<10} {str(on):<28} {power:<3} {value:12.3f} +- {deviation:.3f}")
    print(f"{found.nfev} steps, {found.message}")
    if options.write:
        layer_file.write(put(layer_file.read(), numbers))


if __name__ == "__main__":
    main()

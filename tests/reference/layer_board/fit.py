"""Least squares over the records of a layer that are there to fit to.

Each miss counts in its own uncertainty, with a wide prior around the start, so that
what the records do not see stays where it is.
"""

import argparse
import tempfile
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from scipy.optimize import least_squares, minimize

from . import Board, layer_file
from .board import outcomes

SMALLEST = 0.02  # a correlation below this is left out
FAR = 20.0  # [uncertainties] the miss of a record that has no computed value
POLISHED = 3  # times
SHORT = 5  # evaluations that show whether the misfit still falls
BOUNDS = {"at_most": 1.0, "at_least": -1.0}  # the side where it is overstepped


def residual(outcome):
    """The miss; of a bound how far it is overstepped, 0 where it holds."""
    if outcome.computed is None:
        return FAR
    side = BOUNDS.get(outcome.record["comparison"])
    if side is None:
        return outcome.miss
    beyond = side * (outcome.computed - outcome.record["value"])
    return max(0.0, beyond) / outcome.record["uncertainty"]


@dataclass(frozen=True)
class Fit:
    board: Board
    source: str  # key of the layer's source that names the fit
    # (phase, on, power) or (phase, on, power, order): start and standard deviation of
    # the prior [J/mol, J/(mol K)].
    start: dict
    step: float = 3e-3  # of the derivatives, in standard deviations of the prior
    loss: str = "linear"  # "huber": a miss beyond 1 uncertainty counts by its size
    bends: bool = False  # whether another phase melts first beside the minimum

    def term_of(self, layer, phase, on, power, order=0):
        """The term of that order, which has a coefficient of that power."""
        wanted = [list(entry) if isinstance(entry, tuple) else entry for entry in on]
        terms = layer["phases"][phase]["energy"]
        (term,) = [
            t for t in terms if t["on"] == wanted and t.get("order", 0) == order
        ]
        assert power in term["terms"]
        return term

    def put(self, layer, numbers):
        for place, value in zip(self.start, numbers):
            self.term_of(layer, *place)["terms"][place[2]] = round(float(value), 3)
        return layer

    def fitted_ids(self):
        return [r["id"] for r in self.board.records() if r["use"] == "fit"]

    def put_uncertainty(self, layer, covariance):
        """Standard deviations of the terms, correlations, and what was fitted to."""
        layer["sources"][self.source]["fitted_to_check_records"] = self.fitted_ids()
        deviations = np.sqrt(np.diag(covariance))
        keys = []
        for place, deviation in zip(self.start, deviations):
            term, power = self.term_of(layer, *place), place[2]
            stated = term.setdefault("standard_deviations", {})
            stated[power] = float(f"{deviation:.4g}")
            key = {"phase": place[0], "property": "energy", "on": term["on"]}
            order = {"order": term["order"]} if "order" in term else {}
            keys.append({**key, **order, "power": power})
        layer["correlations"] = self._correlations(keys, covariance, deviations)
        return layer

    def _correlations(self, keys, covariance, deviations):
        r = covariance / np.outer(deviations, deviations)
        return [
            {
                "between": [keys[i], keys[k]],
                "coefficient": round(float(r[i, k]), 4),
                "source": self.source,
                "kind": "estimated",
            }
            for i in range(len(keys))
            for k in range(i + 1, len(keys))
            if abs(r[i, k]) >= SMALLEST
        ]

    def misses(self, numbers, records):
        with tempfile.TemporaryDirectory() as folder:
            file = Path(folder) / self.board.layer.name
            layer = layer_file.read(self.board.layer)
            layer_file.write(self.put(layer, numbers), file)
            judged = outcomes(records, self.board.parameters(file))
        return np.array([residual(o) for o in judged])

    def found(self, numbers=None, steps=None):
        """(numbers, covariance, result) from the start, or from these numbers."""
        start, spread = np.array(list(self.start.values())).T
        first = start if numbers is None else np.array(numbers)
        result = self._descend(1.0 + (first - start) / spread, steps)
        if self.bends and steps is None:
            result = self._descend(self._polished(result.x), 1)
            result.message = "then a search without slopes."
        inverse = np.linalg.inv(result.jac.T @ result.jac)
        covariance = inverse * np.outer(spread, spread)
        return start + spread * (result.x - 1.0), covariance, result

    def _residuals(self):
        """Function of the optimizer's steps, which are relative, hence around 1."""
        records = [r for r in self.board.records() if r["use"] == "fit"]
        start, spread = np.array(list(self.start.values())).T

        def residuals(x):
            shift = x - 1.0
            misses = self.misses(start + spread * shift, records)
            return np.concatenate([misses, shift])

        return residuals

    def _descend(self, first, steps):
        return least_squares(
            self._residuals(),
            first,
            jac="3-point",
            diff_step=self.step,
            x_scale="jac",
            loss=self.loss,
            max_nfev=steps,
        )

    def _polished(self, first):
        """Where slopes change at a bend, a search without slopes ends lower."""
        for _ in range(POLISHED):  # each with a simplex of its own
            first = minimize(
                self._cost,
                first,
                method="Nelder-Mead",
                options={"xatol": 1e-4, "fatol": 1e-5, "adaptive": True},
            ).x
        return first

    def distance(self, layer):
        """How far the numbers of the layer are from the minimum [standard deviations].

        By one Gauss-Newton step; beside a bend, where that step means nothing, by how
        much the misfit falls in a few steps from there.
        """
        numbers = [self.term_of(layer, *p)["terms"][p[2]] for p in self.start]
        if self.bends:
            start, spread = np.array(list(self.start.values())).T
            before = self._cost(1.0 + (np.array(numbers) - start) / spread)
            after = self.found(numbers, SHORT)[2].cost
            return float(np.sqrt(2.0 * (before - after)))
        _, _, result = self.found(numbers, steps=1)
        step = np.linalg.solve(result.jac.T @ result.jac, result.grad)
        return float(np.linalg.norm(result.jac @ step))

    def _cost(self, x):
        """As least_squares counts it, of squares: no fit beside a bend is robust."""
        assert self.loss == "linear"
        return 0.5 * float(np.sum(self._residuals()(x) ** 2))


def main(fit, about):
    parser = argparse.ArgumentParser(description=about.splitlines()[0])
    parser.add_argument("--write", action="store_true", help="change the layer")
    options = parser.parse_args()
    numbers, covariance, result = fit.found()
    deviations = np.sqrt(np.diag(covariance))
    for place, value, deviation in zip(fit.start, numbers, deviations):
        phase, on, power = place[:3]
        print(f"{phase:<10} {str(on):<28} {power:<3} {value:12.3f} +- {deviation:.3f}")
    print(f"{result.nfev} steps, {result.message}")
    if options.write:
        file = fit.board.layer
        layer = fit.put(layer_file.read(file), numbers)
        layer_file.write(fit.put_uncertainty(layer, covariance), file)

"""Sampled compositions of all phases, and the linear program over them."""

from dataclasses import dataclass

import numpy as np
from scipy.optimize import linprog

# A column with more of an element than so many times the overall content is left out
# of the linear program, which would lose its digits; the search along the tangent plane
# still begins there, and the polishing takes in what it finds. Where the solver gives
# up, the next pair is tried.
CONTENTS_AND_TOLERANCES = ((1e6, 1e-9), (1e5, 1e-8), (1e4, 1e-7), (1e3, 1e-7))
ENERGY_SCALE = 1e4  # J/mol, so that costs are of order one


@dataclass
class Column:
    """One composition of one phase."""

    phase: int
    y: np.ndarray


@dataclass
class Mixture:
    """Solution of the linear program."""

    gibbs_energy: float  # J/mol of atoms
    potentials: np.ndarray  # J/mol, by element
    columns: list
    amounts: np.ndarray  # mol of formula units per mol of atoms


class ColumnPool:
    """Grows while the search goes on."""

    def __init__(self, phases, x):
        self.phases, self.x = phases, x
        self._points = [np.empty((0, phase.size)) for phase in phases]
        self._atoms = [np.empty(0) for _ in phases]
        self._energies = [np.empty(0) for _ in phases]  # per mol of atoms
        self._contents = [np.empty((0, len(x))) for _ in phases]  # mole fractions

    def add(self, phase, points):
        """Points of the phase with this index, one in each row."""
        model = self.phases[phase]
        atoms = points @ model.atoms
        parts = {
            "_points": points,
            "_atoms": atoms,
            "_energies": model.value(points) / atoms,
            "_contents": points @ model.element_matrix / atoms[:, None],
        }
        for name, new in parts.items():
            stored = getattr(self, name)
            stored[phase] = np.concatenate([stored[phase], new])

    def _program(self, most_content, tolerance):
        """Columns that may be used, and what the solver returns for them."""
        contents = np.concatenate(self._contents) / self.x
        wanted = np.flatnonzero(contents.max(axis=1) <= most_content)
        solution = linprog(
            np.concatenate(self._energies)[wanted] / ENERGY_SCALE,
            A_eq=contents[wanted].T,
            b_eq=np.ones(len(self.x)),
            method="highs",
            options={
                "primal_feasibility_tolerance": tolerance,
                "dual_feasibility_tolerance": tolerance,
            },
        )
        return wanted, solution

    def mixture(self):
        """Cheapest mixture of columns with the overall composition, Eq. (L1)."""
        for most_content, tolerance in CONTENTS_AND_TOLERANCES:
            wanted, solution = self._program(most_content, tolerance)
            if solution.status == 0:
                break
        else:
            raise RuntimeError(f"linear program: {solution.message}")
        used = np.flatnonzero(solution.x > 0.0)
        columns = [self._column(k) for k in wanted[used]]
        atoms = [column.y @ self.phases[column.phase].atoms for column in columns]
        return Mixture(
            ENERGY_SCALE * solution.fun,
            ENERGY_SCALE * solution.eqlin.marginals / self.x,
            columns,
            solution.x[used] / np.array(atoms),
        )

    def _column(self, k):
        for phase, points in enumerate(self._points):
            if k < len(points):
                return Column(phase, points[k])
            k -= len(points)
        raise IndexError(k)

    def _nearest_first(self, phase, potentials):
        distance = self._energies[phase] - self._contents[phase] @ potentials
        return np.argsort(distance, kind="stable")

    def lowest(self, phase, potentials, count, apart):
        """Up to `count` points nearest to the tangent plane, mutually `apart`."""
        chosen = []
        for k in self._nearest_first(phase, potentials):
            y = self._points[phase][k]
            if all(np.abs(y - other).max() > apart for other in chosen):
                chosen.append(y)
            if len(chosen) == count:
                break
        return chosen

    def lowest_by_corner(self, phase, potentials, count):
        """The nearest point of all that have the same most frequent constituents.

        Of up to `count` sets of such constituents, the nearest first.
        """
        order = self._nearest_first(phase, potentials)
        points = self._points[phase][order]
        corners = np.stack(
            [points[:, part].argmax(axis=1) for part in self.phases[phase].sublattices]
        )
        _, first = np.unique(corners, axis=1, return_index=True)
        return [points[k] for k in sorted(first)[:count]]

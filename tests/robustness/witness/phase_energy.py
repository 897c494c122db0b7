"""Gibbs energy of one phase at one temperature, Eq. (G1), for many points at once."""

import numpy as np

from .magnetism import GAS_CONSTANT, Magnetism
from .parameter_file import expression
from .polynomial import Polynomial, affine_forms

COMPLEX_STEP = 1e-30


class PhaseEnergy:
    """Energies per mole of formula units; y has the site fractions along its last axis.

    Attributes
    ----------
    constituents : list of (int, str)
        Sublattice from 0 and name; the order of y.
    sublattices : list of slice
        Where each sublattice stands in y; one of them is empty in a phase that the
        elements cannot form.
    element_matrix : ndarray, shape (n, elements)
        Atoms of each element per formula unit are y @ element_matrix.
    """

    def __init__(self, file, name, elements, kelvin):
        phase = file["phases"][name]
        self.name, self.rt = name, GAS_CONSTANT * kelvin
        self.constituents, self.sublattices, sites = [], [], []
        for s, sublattice in enumerate(phase["sublattices"]):
            start = len(self.constituents)
            for constituent in sublattice["constituents"]:
                if constituent == "vacancy" or constituent in elements:
                    self.constituents.append((s, constituent))
                    sites.append(sublattice["sites"])
            self.sublattices.append(slice(start, len(self.constituents)))
        self.size = len(self.constituents)
        self.sites = np.array(sites, dtype=float)
        named = [[e == c for e in elements] for _, c in self.constituents]
        self.element_matrix = self.sites[:, None] * np.array(named, dtype=float)
        self.atoms = self.element_matrix.sum(axis=1)
        self._energy = self._polynomial(file, phase["energy"], kelvin)
        self._magnetism = None
        if "magnetism" in phase:
            curie = self._polynomial(file, phase["curie_temperature"], kelvin)
            moment = self._polynomial(file, phase["magnetic_moment"], kelvin)
            self._magnetism = Magnetism(phase["magnetism"], curie, moment, kelvin)

    def _polynomial(self, file, terms, kelvin):
        place = {constituent: i for i, constituent in enumerate(self.constituents)}
        coefficients, products = [], []
        for term in terms:
            on = [[n] if isinstance(n, str) else n for n in term["on"]]
            if all((s, n) in place for s, names in enumerate(on) for n in names):
                coefficients.append(expression(file, term, kelvin))
                order = term.get("order", 0)
                products.append(affine_forms(on, order, place, self.size))
        return Polynomial(coefficients, products, self.size)

    @property
    def reachable(self):
        """False when a sublattice has no constituent left."""
        return all(part.stop > part.start for part in self.sublattices)

    def value(self, y):
        """[J/mol]; y in [0, 1]."""
        safe = np.where(y.real > 0.0, y, 1.0)
        total = self._energy.value(y) + self.rt * (y * np.log(safe)) @ self.sites
        return total + (self._magnetism.value(y) if self._magnetism else 0.0)

    def value_and_gradient(self, y):
        """G and dG/dy_i, every site fraction an independent variable.

        y > 0, or complex.
        """
        value, gradient = self._energy.value_and_gradient(y)
        logs = np.log(y)
        value = value + self.rt * (y * logs) @ self.sites
        gradient += self.rt * self.sites * (logs + 1.0)
        if self._magnetism:
            magnetic, slopes = self._magnetism.value_and_gradient(y)
            value, gradient = value + magnetic, gradient + slopes
        return value, gradient

    def gradient(self, y):
        """The second of `value_and_gradient`."""
        return self.value_and_gradient(y)[1]

    def hessian(self, y):
        """d2G/dy_i dy_j at one point, by complex steps of the gradient: exact."""
        steps = y + 1j * COMPLEX_STEP * np.eye(self.size)
        return self.gradient(steps).imag / COMPLEX_STEP

"""Sums of products of affine forms of the site fractions, Eq. (G1) to (G4)."""

import numpy as np


def affine_forms(names_on, order, place, size):
    """The forms whose product a term is multiplied with, as (slopes, constant).

    `names_on` lists the names per sublattice, `place` maps (sublattice, name) to the
    constituent. A factor to the n-th power is listed n times.
    """
    forms = []
    for s, names in enumerate(names_on):
        forms += [(np.eye(size)[place[s, name]], 0.0) for name in names]
    mixing = [s for s, names in enumerate(names_on) if len(names) > 1]
    if len(mixing) != 1:  # an end member, or Eq. (G4)
        return forms
    units = [np.eye(size)[place[mixing[0], name]] for name in names_on[mixing[0]]]
    if len(units) == 2:  # Eq. (G2)
        return forms + [(units[0] - units[1], 0.0)] * order
    return forms + [(units[order] - sum(units) / 3.0, 1.0 / 3.0)]  # Eq. (G3)


class Polynomial:
    """Value and gradient for many points at once; real or complex."""

    def __init__(self, coefficients, products, size):
        self.size = size
        self._coefficients = np.array(coefficients, dtype=float)
        self._depth = max((len(forms) for forms in products), default=1)
        shape = (self._depth, len(products))
        self._slopes, self._constants = np.zeros((size, *shape)), np.ones(shape)
        for t, forms in enumerate(products):
            for k, (slopes, constant) in enumerate(forms):
                self._slopes[:, k, t] = slopes
                self._constants[k, t] = constant
        self._flat_slopes = self._slopes.reshape(size, -1)

    def _forms(self, y):
        forms = (y @ self._flat_slopes).reshape(*y.shape[:-1], *self._constants.shape)
        return forms + self._constants

    def value(self, y):
        """Shape y.shape[:-1]."""
        return self._forms(y).prod(axis=-2) @ self._coefficients

    def value_and_gradient(self, y):
        """Every site fraction an independent variable; the gradient has y's shape."""
        forms = self._forms(y)
        others = np.empty_like(forms)  # product of all forms of the term but this one
        below = np.ones_like(forms[..., 0, :])
        for k in range(self._depth):
            others[..., k, :] = below
            below = below * forms[..., k, :]
        above = np.ones_like(below)
        for k in reversed(range(self._depth)):
            others[..., k, :] *= above
            above = above * forms[..., k, :]
        others *= self._coefficients
        value = (others[..., 0, :] * forms[..., 0, :]).sum(axis=-1)
        return value, others.reshape(*y.shape[:-1], -1) @ self._flat_slopes.T

"""Local minima of a phase's distance D to the plane of the potentials, Eq. (E2).

D is per mole of atoms. The variables are the square roots of the site fractions, up to
a factor on each sublattice: in them the ideal part of the energy is equally curved
everywhere, and no bounds are needed.
"""

import numpy as np
from scipy.optimize import minimize

LEAST_FRACTION = 1e-14  # where a start is pure: its logarithm must exist


def _fractions(phase, roots):
    y, sums = roots * roots + 1e-300, np.empty(phase.size)
    for part in phase.sublattices:
        sums[part] = y[part].sum()
    return y / sums, sums


def descend(phase, potentials, start):
    """(y, D) of the local minimum that the descent from `start` ends in."""
    plane = phase.element_matrix @ potentials

    def value_and_gradient(roots):
        y, sums = _fractions(phase, roots)
        atoms = y @ phase.atoms
        value, slope = phase.value_and_gradient(y)
        d = (value - y @ plane) / atoms
        slope = (slope - plane - d * phase.atoms) / atoms
        for part in phase.sublattices:
            slope[part] -= y[part] @ slope[part]
        return d / phase.rt, 2.0 * roots * slope / sums / phase.rt

    result = minimize(
        value_and_gradient,
        np.sqrt(np.maximum(start, LEAST_FRACTION)),
        jac=True,
        method="L-BFGS-B",
        options={"gtol": 1e-5, "ftol": 1e-11, "maxcor": 20, "maxiter": 300},
    )
    return _fractions(phase, result.x)[0], result.fun * phase.rt

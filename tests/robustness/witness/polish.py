"""The conditions of equilibrium of a chosen set of phases, by a general root finder.

Unknown are the logarithms of all site fractions, one multiplier per sublattice, the
amounts of the phases, and the chemical potentials. The equations, Eq. (E1):

    dG/dy_i = sum_e N_ie mu_e + lambda_s     every constituent of every phase
    sum of y on a sublattice = 1
    G = sum_e N_e mu_e                       every phase lies on the tangent plane
    sum of amounts * N_e = x_e               every element
"""

from dataclasses import dataclass

import numpy as np
from scipy.optimize import root

from .columns import Column, Mixture

RESIDUAL = 1e-9  # of equations divided by RT, 1 or x_e
LEAST_FRACTION = 1e-14
SAME_POINT = 1e-3  # two occurrences of one phase that come this near are one


@dataclass
class _Part:
    """Places of one occurrence among the unknowns, which are those of its equations."""

    phase: object
    sums: np.ndarray  # sublattice by constituent: 1 where it belongs
    logs: slice
    multipliers: slice
    amount: int


class EquilibriumEquations:
    """Residuals and Jacobian for phases that are given, one entry per occurrence."""

    def __init__(self, phases, x):
        self.x, self.parts, at = x, [], 0
        for phase in phases:
            sums = np.zeros((len(phase.sublattices), phase.size))
            for s, sublattice in enumerate(phase.sublattices):
                sums[s, sublattice] = 1.0
            stop = at + phase.size
            end = stop + len(sums)
            self.parts.append(
                _Part(phase, sums, slice(at, stop), slice(stop, end), end)
            )
            at = end + 1
        self.potentials = slice(at, at + len(x))
        self.rt = phases[0].rt

    def start(self, mixture):
        """Unknowns from a mixture: potentials and multipliers that fit its phases best.

        Those of the linear program are not used: of an element of which there is
        almost nothing it knows the potential badly.
        """
        unknowns = np.zeros(self.potentials.stop)
        rows, rights = [], []
        for part, column, amount in zip(self.parts, mixture.columns, mixture.amounts):
            y = np.maximum(column.y, LEAST_FRACTION)
            unknowns[part.logs], unknowns[part.amount] = np.log(y), amount
            weights = np.sqrt(y * (amount * part.phase.atoms.sum() + 1e-6))
            block = np.zeros((part.phase.size + 1, len(unknowns)))
            block[:-1, self.potentials] = part.phase.element_matrix
            block[:-1, part.multipliers] = part.sums.T
            block[-1, self.potentials] = y @ part.phase.element_matrix
            right = np.append(part.phase.gradient(y), part.phase.value(y)) / self.rt
            weights = np.append(weights, np.sqrt(amount + 1e-6))
            rows.append(weights[:, None] * block)
            rights.append(weights * right)
        fit = np.linalg.lstsq(np.concatenate(rows), np.concatenate(rights), rcond=1e-14)
        return unknowns + fit[0]

    def residuals(self, unknowns):
        """All equations, each in its own scale."""
        result = np.empty_like(unknowns)
        potentials, balance = unknowns[self.potentials], -np.ones(len(self.x))
        for part in self.parts:
            phase, y = part.phase, np.exp(unknowns[part.logs])
            plane = phase.element_matrix @ potentials
            result[part.logs] = phase.gradient(y) / self.rt - plane
            result[part.logs] -= unknowns[part.multipliers] @ part.sums
            result[part.multipliers] = part.sums @ y - 1.0
            result[part.amount] = phase.value(y) / self.rt - y @ plane
            balance += unknowns[part.amount] * (y @ phase.element_matrix) / self.x
        result[self.potentials] = balance
        return result

    def jacobian(self, unknowns):
        """Derivatives of the residuals."""
        result = np.zeros((len(unknowns), len(unknowns)))
        potentials = unknowns[self.potentials]
        for part in self.parts:
            phase, y = part.phase, np.exp(unknowns[part.logs])
            contents, amount = phase.element_matrix, unknowns[part.amount]
            slope = phase.gradient(y) / self.rt - contents @ potentials
            result[part.logs, part.logs] = phase.hessian(y) / self.rt * y
            result[part.logs, part.multipliers] = -part.sums.T
            result[part.logs, self.potentials] = -contents
            result[part.multipliers, part.logs] = part.sums * y
            result[part.amount, part.logs] = slope * y
            result[part.amount, self.potentials] = -(y @ contents)
            by_logs = amount * (y[:, None] * contents / self.x).T
            result[self.potentials, part.logs] = by_logs
            result[self.potentials, part.amount] = (y @ contents) / self.x
        return result


def fitted_potentials(mixture, phases, x):
    """Chemical potentials [J/mol] that fit the phases of a mixture best."""
    chosen = [phases[column.phase] for column in mixture.columns]
    equations = EquilibriumEquations(chosen, x)
    return equations.start(mixture)[equations.potentials] * equations.rt


def merged(mixture, phases):
    """The mixture with columns of one phase united where mixing them lowers G."""
    groups = []
    for column, amount in zip(mixture.columns, mixture.amounts):
        phase = phases[column.phase]
        for group in groups:
            if group[0] != column.phase:
                continue
            y = (group[2] * group[1] + amount * column.y) / (group[2] + amount)
            apart = group[2] * phase.value(group[1]) + amount * phase.value(column.y)
            if (group[2] + amount) * phase.value(y) <= apart:
                group[1], group[2] = y, group[2] + amount
                break
        else:
            groups.append([column.phase, column.y, amount])
    return _with(mixture, [(Column(p, y), n) for p, y, n in groups])


def _with(mixture, pairs):
    columns, amounts = [c for c, _ in pairs], np.array([n for _, n in pairs])
    return Mixture(mixture.gibbs_energy, mixture.potentials, columns, amounts)


def _two_are_one(columns):
    for k, one in enumerate(columns):
        for other in columns[:k]:
            if one.phase == other.phase:
                if np.abs(one.y - other.y).max() < SAME_POINT:
                    return True
    return False


def _solution(mixture, phases, x):
    """The root, amounts of either sign; None when the root finder fails."""
    chosen = [phases[column.phase] for column in mixture.columns]
    equations = EquilibriumEquations(chosen, x)
    with np.errstate(all="ignore"):  # wild trial steps of the root finder
        solution = root(
            equations.residuals,
            equations.start(mixture),
            jac=equations.jacobian,
            method="hybr",
            options={"xtol": 1e-13, "maxfev": 200},
        )
    if not np.abs(solution.fun).max() <= RESIDUAL:
        return None
    amounts = np.array([solution.x[part.amount] for part in equations.parts])
    columns = [
        Column(column.phase, np.exp(solution.x[part.logs]))
        for column, part in zip(mixture.columns, equations.parts)
    ]
    if _two_are_one(columns):
        return None
    energy = sum(n * p.value(c.y) for n, p, c in zip(amounts, chosen, columns))
    potentials = solution.x[equations.potentials] * equations.rt
    return Mixture(energy, potentials, columns, amounts)


def polished(mixture, phases, x):
    """The equilibrium of the phases of a mixture; None when there is none.

    A phase whose amount comes out negative is left out and the rest solved again; when
    the root finder fails, the smallest one is.
    """
    while mixture.columns:
        exact = _solution(mixture, phases, x)
        if exact and exact.amounts.min() > 0.0:
            return exact
        pairs = list(zip(mixture.columns, mixture.amounts))
        del pairs[int(np.argmin((exact or mixture).amounts))]
        mixture = _with(mixture, pairs)
    return None

"""The lowest Gibbs energy by linear program, local descents and polishing."""

from dataclasses import dataclass, replace

import numpy as np

from .columns import Column, ColumnPool
from .parameter_file import mole_fractions
from .phase_energy import PhaseEnergy
from .polish import fitted_potentials, merged, polished
from .samples import halfway, neighbours, overall_in, sample
from .tangent_plane import descend

MOST_ROUNDS = 60
STABLE = 1e-5  # J/mol of atoms: a phase less than this below the plane counts as on it
TRACE = 1e-5  # mole fraction
FIRST_POLISH = 2  # round
MOST_EXCHANGES = 15
FEW = 2, 0.3  # descents per phase in a round, and how far apart they begin
MANY = 6, 0.15  # the same before the witness stops,
CORNERS = 6  # and descents from points near as many end members


@dataclass
class Witness:
    """What the witness found; amounts in percent of the atoms."""

    gibbs_energy: float  # J/mol of atoms, of a mixture with the overall composition
    gap: float  # J/mol of atoms: how far below it the lowest plane it found lies
    polished: bool
    rounds: int
    x: np.ndarray  # overall mole fractions, by element
    phases: list  # PhaseEnergy of every phase that the elements can form
    columns: list
    percents: np.ndarray
    potentials: np.ndarray


def _pool(phases, elements, x):
    random, pool = np.random.default_rng(3), ColumnPool(phases, x)
    for k, phase in enumerate(phases):
        pool.add(k, sample(phase, elements, x, random))
        if phase.name == "ferrite":  # so that the first program has a solution
            pool.add(k, overall_in(phase, elements, x)[None, :])
    return pool


def _descents(pool, potentials, starts):
    """Adds the minima of D below the starts, one list of them for each phase.

    Returns (D, column), lowest first.
    """
    found = []
    for k, phase in enumerate(pool.phases):
        minima = [descend(phase, potentials, y) for y in starts[k]]
        pool.add(k, np.array([y for y, _ in minima]))
        found += [(d, Column(k, y)) for y, d in minima]
    return sorted(found, key=lambda pair: pair[0])


def _few_starts(pool, mixture):
    phases = range(len(pool.phases))
    return [pool.lowest(k, mixture.potentials, *FEW) for k in phases]


def _many_starts(pool, mixture):
    phases, potentials = range(len(pool.phases)), mixture.potentials
    starts = [pool.lowest(k, potentials, *MANY) for k in phases]
    for k in phases:
        starts[k] += pool.lowest_by_corner(k, potentials, CORNERS)
    for column in mixture.columns:
        starts[column.phase] += halfway(pool.phases[column.phase], column.y)
    return starts


def _exchanged(pool, mixture):
    """Polishes, then takes in what lies below the plane as long as that lowers G.

    Returns the mixture, or None, and the lowest D of all descents at its potentials.
    """
    exact, lowest = polished(mixture, pool.phases, pool.x), 0.0
    for _ in range(MOST_EXCHANGES if exact else 0):
        for starts in (_few_starts, _many_starts):
            found = _descents(pool, exact.potentials, starts(pool, exact))
            lowest, column = found[0]
            if lowest < -STABLE:
                break
        else:
            return exact, lowest
        columns, amounts = [*exact.columns, column], np.append(exact.amounts, 1e-3)
        wider = replace(exact, columns=columns, amounts=amounts)
        better = polished(wider, pool.phases, pool.x)
        if not better or better.gibbs_energy >= exact.gibbs_energy:
            break
        exact = better
    return exact, lowest


def _add_around(pool, mixture):
    """Lets the linear program move the compositions of a mixture a little."""
    for column in mixture.columns:
        pool.add(column.phase, neighbours(pool.phases[column.phase], column.y))


def _trusted_potentials(pool, mixture):
    """Those of the linear program; of traces, of which it knows little, fitted ones."""
    fitted = fitted_potentials(mixture, pool.phases, pool.x)
    return np.where(pool.x < TRACE, fitted, mixture.potentials)


def _search(pool):
    """(mixture, lowest D at its potentials, polished or not, rounds)"""
    for rounds in range(1, MOST_ROUNDS + 1):
        mixture = merged(pool.mixture(), pool.phases)
        mixture = replace(mixture, potentials=_trusted_potentials(pool, mixture))
        found = _descents(pool, mixture.potentials, _few_starts(pool, mixture))
        _add_around(pool, mixture)
        if rounds < FIRST_POLISH:
            continue
        exact, lowest = _exchanged(pool, mixture)
        if exact and lowest >= -STABLE:
            return exact, lowest, True, rounds
        if exact:
            _add_around(pool, exact)
    if exact and exact.gibbs_energy <= mixture.gibbs_energy:
        return exact, lowest, True, rounds
    return mixture, min(found[0][0], 0.0), False, rounds


def solve(file, weight_percent, celsius):
    """The equilibrium of all phases of the file but graphite."""
    elements = list(weight_percent)
    x = np.array(list(mole_fractions(file, weight_percent).values()))
    kelvin = celsius + 273.15
    names = [name for name in file["phases"] if name != "graphite"]
    phases = [PhaseEnergy(file, name, elements, kelvin) for name in names]
    phases = [phase for phase in phases if phase.reachable]
    pool = _pool(phases, elements, x)
    best, lowest, exact, rounds = _search(pool)
    gap = best.gibbs_energy - (x @ best.potentials + lowest)
    atoms = [c.y @ phases[c.phase].atoms for c in best.columns]
    percents = 100.0 * best.amounts * np.array(atoms)
    return Witness(
        best.gibbs_energy,
        gap,
        exact,
        rounds,
        x,
        phases,
        best.columns,
        percents,
        best.potentials,
    )

"""Heat capacity, entropy and heat content of one phase of fixed composition."""

from . import library, thermal
from .reaction import LOWEST


def heat_capacity(record):
    return thermal.heat_capacity(_gibbs(record), record["celsius"] + 273.15)


def entropy(record):
    return thermal.entropy(_gibbs(record), record["celsius"] + 273.15)


def heat_content(record):
    """H(T) - H(298) [kJ/mol of formula units].

    H at 298.15 K is taken 1.25 K higher, where the central difference stays inside the
    curves, and carried back with the heat capacity.
    """
    gibbs = _gibbs(record)
    start = thermal.enthalpy(gibbs, LOWEST)
    above = LOWEST + 4.0 * thermal.STEP
    start -= thermal.heat_capacity(gibbs, above) * (LOWEST - 298.15)
    return (thermal.enthalpy(gibbs, record["celsius"] + 273.15) - start) / 1000.0


def _gibbs(record):
    return lambda t: library.gibbs_energy(record["phase"], record["sites"], t)

"""How an alloying element shares itself between two phases.

Measured on the metal atoms alone (u-fraction: atoms of M per metal atom), so that the
carbon of a carbide does not enter.
"""

from math import inf, log

from . import library


def partition_coefficient(record):
    """u_M in the first phase of `between` over u_M in the second."""
    state = library.soak(record)
    first, second = (library.phase(state, name) for name in record["between"])
    return _share(first, record["element"]) / _share(second, record["element"])


def partition_direction(record):
    """Logarithm of the partition coefficient: positive into the first phase."""
    coefficient = partition_coefficient(record)
    return log(coefficient) if coefficient > 0.0 else -inf


def _share(occurrence, element):
    return occurrence.atom_fraction[element] / (1.0 - occurrence.atom_fraction["C"])

"""What is in a phase, in the matrix, or in all carbides together.

`phase` names an occurrence, or "matrix" (all matrix phases, mass-weighted) or
"carbides" (all of them, mass-weighted: the residue of an electrolytic isolation).
"""

from . import library


def weight_percent(record):
    state = library.soak(record)
    library.require(record, state)
    return _weight_percent(state, record["phase"], record["element"])


def atom_percent(record):
    occurrence = library.phase(library.soak(record), record["phase"])
    return 100.0 * occurrence.atom_fraction[record["element"]]


def atom_ratio(record):
    """Atoms of the first element per atom of the second."""
    occurrence = library.phase(library.soak(record), record["phase"])
    first, second = record["elements"]
    return occurrence.atom_fraction[first] / occurrence.atom_fraction[second]


def _weight_percent(state, name, element):
    if name == "matrix":
        return state.matrix.weight_percent[element]
    if name != "carbides":
        return library.phase(state, name).weight_percent[element]
    carbides = list(state.carbides.values())
    mass = sum(c.mass_percent for c in carbides)
    if not carbides:
        raise library.Absent("no carbide at all")
    return sum(c.mass_percent * c.weight_percent[element] for c in carbides) / mass

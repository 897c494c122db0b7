"""Cell volumes, lattice parameters, thermal expansion and density."""

from math import log

from . import library

AVOGADRO = 6.02214076e23  # 1/mol, exact
ANGSTROM3_PER_CM3 = 1e24


def cell_volume(record):
    """Volume of a cell of `atoms_per_cell` atoms [cubic angstrom]."""
    occurrence = library.phase(library.soak(record), record["phase"])
    volume = occurrence.molar_volume * ANGSTROM3_PER_CM3 / AVOGADRO
    return volume * record["atoms_per_cell"]


def lattice_parameter(record):
    """Edge of a cubic cell [angstrom]."""
    return cell_volume(record) ** (1.0 / 3.0)


def volume_expansion(record):
    """d ln(V) / dT of a phase of fixed composition [1/K]."""
    celsius, step = record["celsius"], 5.0
    volumes = [
        library.phase(library.soak(record, celsius=t), record["phase"]).molar_volume
        for t in (celsius - step, celsius + step)
    ]
    return log(volumes[1] / volumes[0]) / (2.0 * step)


def density(record):
    """Of the whole steel [g/cm3]."""
    return library.soak(record).density

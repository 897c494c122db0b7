"""Highest Curie temperature of a binary iron alloy without carbon [C]."""

from . import library
from .roots import largest


def curie_maximum(record):
    def curie(x):
        sites = [{"Fe": 1.0 - x, record["element"]: x}, "vacancy"]
        return library.curie_temperature(record["phase"], sites) - 273.15

    return largest(curie, *record["search_atom_fraction"], width=1e-4)[1]

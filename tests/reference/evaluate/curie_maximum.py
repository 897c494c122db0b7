"""Highest Curie temperature of a binary iron alloy without carbon [C]."""

from . import library
from .roots import largest


def curie_maximum(record):
    low, high = record["search_atom_fraction"]
    return largest(lambda x: kelvin(record, x), low, high, width=1e-4)[1] - 273.15


def kelvin(record, atom_fraction):
    """Curie temperature of the record's phase with so much of its element [K]."""
    iron = {"Fe": 1.0 - atom_fraction, record["element"]: atom_fraction}
    return library.curie_temperature(record["phase"], [iron, "vacancy"])

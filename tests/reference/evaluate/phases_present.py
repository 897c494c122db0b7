"""Names of all phases of a state."""

from . import library


def phases_present(record):
    return sorted(library.present(library.soak(record)))

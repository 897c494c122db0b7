"""How much of a phase, or of all carbides together, as a fraction of the steel."""

from . import library


def mass_fraction(record):
    return _fraction(library.soak(record), record["phase"], "mass_percent")


def volume_fraction(record):
    return _fraction(library.soak(record), record["phase"], "volume_percent")


def volume_fraction_gained(record):
    """Volume fraction at `celsius` less that at `celsius_before`."""
    before = library.soak(record, celsius=record["celsius_before"])
    start = _fraction(before, record["phase"], "volume_percent")
    return volume_fraction(record) - start


def _fraction(state, name, unit):
    if name == "carbides":
        return sum(getattr(c, unit) for c in state.carbides.values()) / 100.0
    return getattr(library.phase(state, name), unit) / 100.0

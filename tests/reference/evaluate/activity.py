"""Activity of carbon relative to graphite, and what alloying does to it."""

from math import log, log10

from . import library
from .composition import weight_percent


def carbon_activity(record):
    state = library.soak(record)
    library.require(record, state)
    return state.carbon_activity


def log_activity_coefficient(record):
    """log10(a / z), z = n_C / (s n_Fe - n_C) with s interstices per iron atom."""
    state = library.soak(record)
    carbon = state.matrix.atom_fraction["C"]
    z = carbon / (record["interstices"] * (1.0 - carbon) - carbon)
    return log10(state.carbon_activity / z)


def interaction(record):
    """d ln(gamma_C) / d x_M at a fixed atom fraction of carbon."""
    x_carbon, x_metal = record["x_carbon"], record["x_metal"]
    plain = weight_percent({"C": x_carbon})
    alloyed = weight_percent({"C": x_carbon, record["element"]: x_metal})
    start = library.soak(record, composition=plain).carbon_activity
    end = library.soak(record, composition=alloyed).carbon_activity
    return log(end / start) / x_metal

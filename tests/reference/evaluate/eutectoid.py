"""Austenite at the eutectoid of iron and carbon: where, how much carbon, what activity.

The temperature is that at which austenite appears in a two-phase alloy; compositions
are read 0.05 C above it, the activity 0.05 C below it.
"""

from . import library, phase_temperature

SIDE = 0.1  # [C] wider than the bisection leaves open


def eutectoid_carbon(record):
    """Weight percent carbon in `phase` in the field above the eutectoid."""
    above = phase_temperature.appears({**record, "phase": "austenite"}) + SIDE
    state = library.soak(record, celsius=above)
    return library.phase(state, record["phase"]).weight_percent["C"]


def eutectoid_activity(record):
    """Activity of carbon relative to graphite just below the eutectoid."""
    below = phase_temperature.appears({**record, "phase": "austenite"}) - SIDE
    return library.soak(record, celsius=below).carbon_activity


def transformation_heat(record):
    """Enthalpy of `after` less that of `before`, same steel and temperature [J/g].

    Both states are restricted to their phases; H = G - T dG/dT along each of them.
    """
    return _enthalpy(record, record["after"]) - _enthalpy(record, record["before"])


def _enthalpy(record, phases):
    def gibbs(celsius):
        state = library.soak(record, celsius=celsius, phases=phases)
        moles = sum(
            occurrence.mass_percent / occurrence.molar_mass
            for occurrence in state.occurrences
        )
        return state.gibbs_energy * moles / 100.0  # [J/g]

    celsius = record["celsius"]
    step = 0.5
    slope = (gibbs(celsius + step) - gibbs(celsius - step)) / (2.0 * step)
    return gibbs(celsius) - (celsius + 273.15) * slope

"""Gibbs energy or enthalpy of a reaction, and the temperature where it is at rest.

`reaction` lists what forms (positive) and what is used up (negative): entries
{"count": n, "phase": name, "sites": [...]} for a phase, per mole of formula units, or
{"count": n, "element": symbol} for an element in its reference form.
"""

from . import library, thermal
from .roots import bisect

LOWEST = 298.15 + 2.5 * thermal.STEP  # [K] the curves of the file begin at 298.15 K


def gibbs(record, kelvin):
    total = 0.0
    for entry in record["reaction"]:
        if "element" in entry:
            energy = library.element_energy(entry["element"], kelvin)
        else:
            energy = library.gibbs_energy(entry["phase"], entry["sites"], kelvin)
        total += entry["count"] * energy
    return total


def reaction_gibbs_energy(record):
    return gibbs(record, _kelvin(record)) / record.get("per", 1.0)


def reaction_enthalpy(record):
    kelvin = max(_kelvin(record), LOWEST)
    return thermal.enthalpy(lambda t: gibbs(record, t), kelvin) / record.get("per", 1.0)


def reaction_temperature(record):
    """Celsius at which the Gibbs energy of the reaction is zero."""
    low, high = record["search_celsius"]
    return bisect(lambda t: gibbs(record, t + 273.15), low, high)


def _kelvin(record):
    return record["celsius"] + 273.15

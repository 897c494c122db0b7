"""Austenite and ferrite of an iron-metal system: widest loop and touching points.

The composition at which both have the same Gibbs energy always lies inside the
two-phase field, so a soak of that composition gives both its boundaries.
"""

from . import library
from .composition import weight_percent
from .roots import bisect, largest

LOOP = ("austenite", "ferrite")


def loop_nose(record):
    """Largest weight percent of the element on one boundary, over all temperatures."""
    low, high = record["search_celsius"]
    return largest(lambda t: _boundary(record, t), low, high, width=1.0)[1]


def congruent_temperature(record):
    """Extremum of the equal-energy temperature, where the two boundaries touch [C].

    Austenite and ferrite, or the two phases of `between`, the second stable below.
    """
    return _congruent(record)[0]


def congruent_composition(record):
    """Weight percent at that point."""
    return weight_percent({record["element"]: _congruent(record)[1]})[record["element"]]


def _congruent(record):
    sign = {"lowest": -1.0, "highest": 1.0}[record["extremum"]]
    x, value = largest(
        lambda x: sign * _equal_energy_temperature(record, x),
        *record["search_atom_fraction"],
        width=1e-4,
    )
    return sign * value, x


def _equal_energy_temperature(record, x):
    low, high = record["search_celsius"]
    element, pair = record["element"], record.get("between", LOOP)
    return bisect(lambda t: _difference(element, x, t, pair), low, high)


def _difference(element, x, celsius, pair=LOOP):
    """G of the first less G of the second, carbon-free alloy [J/mol]."""
    metals, kelvin = {"Fe": 1.0 - x, element: x}, celsius + 273.15
    first, second = (
        library.gibbs_energy(
            name, [metals] if name == "liquid" else [metals, "vacancy"], kelvin
        )
        for name in pair
    )
    return first - second


def _boundary(record, celsius):
    element = record["element"]
    x = bisect(
        lambda x: _difference(element, x, celsius),
        1e-6,
        record["search_atom_fraction"][1],
        width=1e-7,
    )
    composition = weight_percent({element: x})
    state = library.soak(record, celsius=celsius, composition=composition)
    return library.phase(state, record["phase"]).weight_percent[element]

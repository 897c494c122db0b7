"""The parameter file as plain numbers at one temperature."""

import json
import math
from functools import cache
from pathlib import Path

SHIPPED = Path(__file__).resolve().parents[3] / "thermo_data" / "tool_steel.json"


@cache
def shipped():
    """The file that ships with the library, as JSON gives it."""
    return json.loads(SHIPPED.read_text(encoding="utf-8"))


def power(name, kelvin):
    """Value of a named power of T, such as "1", "T", "T ln T", "T^-9"."""
    if name == "1":
        return 1.0
    if name == "T":
        return kelvin
    if name == "T ln T":
        return kelvin * math.log(kelvin)
    return kelvin ** int(name.removeprefix("T^"))


def expression(file, value, kelvin):
    """Eq. (P1): powers of T, and named curves times a factor."""
    total = sum(c * power(name, kelvin) for name, c in value.get("terms", {}).items())
    for name, factor in value.get("curves", {}).items():
        total += factor * curve(file, name, kelvin)
    return total


def curve(file, name, kelvin):
    """A named curve; its pieces follow one another upwards."""
    pieces = file["curves"][name]["pieces"]
    for piece in pieces:
        if kelvin < piece["up_to_K"]:
            return expression(file, piece, kelvin)
    return expression(file, pieces[-1], kelvin)


def mole_fractions(file, weight_percent):
    """Mole fractions of a composition in weight percent, in the same order."""
    moles = {
        element: percent / file["elements"][element]["molar_mass_g_per_mol"]
        for element, percent in weight_percent.items()
    }
    total = sum(moles.values())
    return {element: n / total for element, n in moles.items()}

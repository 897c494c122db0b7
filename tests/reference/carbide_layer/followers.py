"""End members that nobody has measured, and that follow one that was fitted."""

import json

import gibbsteel as gs
from shipped_edition import older

from .numbers import FOLLOW

SOURCE = "follows"
CITATION = "end members without a measurement: kept at their distance from others"


def of(shifts):
    """Phase -> terms that follow.

    @param shifts  (phase, index) -> {power: shift} of what was fitted
    """
    whole = json.loads(gs.write_parameters(older()))["phases"]
    made = {}
    for phase, pairs in FOLLOW.items():
        for follower, leader in pairs.items():
            if (phase, leader) not in shifts:
                continue
            term = dict(whole[phase]["energy"][follower])
            term["terms"] = dict(term["terms"])
            for power, shift in shifts[phase, leader].items():
                term["terms"][power] = term["terms"].get(power, 0.0) + shift
            name = ", ".join(map(str, whole[phase]["energy"][leader]["on"]))
            term.update(source=SOURCE, kind="estimated", confidence="low")
            term["note"] = f"shifted like ({name}), from which the file derives it"
            made.setdefault(phase, []).append(term)
    return made

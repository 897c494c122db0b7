"""The calibration, with the end members that follow its numbers inside it."""

import json

import gibbsteel as gs
from gibbsteel import _core
from shipped_edition import BELOW, older

from . import added, data, followers, numbers

FILE = "carbides.json"
LOWER = 20000.0  # [J/mol]
MOST_ROUNDS = 12
CLOSE = 0.01  # [prior standard deviations] between the rounds


def base(title, shifts):
    """Edition 2026-11-25 with what was added, and followers as far as others moved."""
    layer = added.added(title)
    layer["sources"][followers.SOURCE] = {"citation": followers.CITATION}
    for phase, terms in followers.of(shifts).items():
        layer["phases"].setdefault(phase, {"energy": []})["energy"] += terms
    return _core.parse_parameters(json.dumps(layer), "base.json", older())


def once(title, places, start, shifts, cross_validate=False):
    return gs.calibrate(
        data.measurements(),
        places,
        on=base(title, shifts),
        start=start,
        cross_validate=cross_validate,
        most_evaluations=5000,
        file_name=FILE,
    )


def found(fit):
    """Place -> value: where the next round starts."""
    return {number.place: number.after for number in fit.numbers}


def far(fit, start):
    """The largest change since the start, in prior standard deviations."""
    return max(
        abs(n.after - start.get(n.place, n.before)) / n.prior_deviation
        for n in fit.numbers
    )


def settled(title, places, start):
    """Rounds until neither numbers nor followers move; the last of them."""
    below = json.loads(BELOW.read_text("utf-8"))
    shifts = numbers.shifts({p: v - value_at(below, p) for p, v in start.items()})
    for _ in range(MOST_ROUNDS):
        fit = once(title, places, start, shifts)
        near = far(fit, start) < CLOSE
        start, shifts = found(fit), numbers.moved(fit)
        if near:
            return fit
    raise RuntimeError(f"not settled after {MOST_ROUNDS} rounds")


def value_at(file, place):
    """Of a number in a parameter file; None where it has no such number."""
    *path, power = place.strip("/").split("/")
    node = file
    for step in path:
        node = node[int(step) if isinstance(node, list) else step]
    return node.get(power)


def starts(places):
    """The file itself, and with all of M23C6 with W and Mo 20 kJ/mol lower.

    The misfit has two valleys, with M7C3 and, deeper, with M23C6 in annealed M2 and M4.
    """
    below = json.loads(BELOW.read_text("utf-8"))
    there = {place: value_at(below, place) for place in places}
    m23c6 = [p for p in places if p.startswith("/phases/M23C6/") and p.endswith("/1")]
    lower = {place: there[place] - LOWER for place in m23c6}
    return [there, {**there, **lower}]


def calibrated(title, wider=False):
    """The best of several starts, with cross-validation.

    @param title  first entries of a layer: format, title, edition, licence
    """
    places = numbers.places(wider)
    fits = [settled(title, places, start) for start in starts(places)]
    best = min(fits, key=lambda fit: fit.misfit_after)
    print("misfit by start:", ", ".join(f"{fit.misfit_after:.2f}" for fit in fits))
    return once(title, places, found(best), numbers.moved(best), not wider)

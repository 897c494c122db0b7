"""Computes the quantities of records.json in this folder.

Kinds that are named here are added to those of `evaluate`. The solidus of a record is
`appears` with `phase` liquid.
"""

from evaluate import KINDS, library, phase_temperature
from evaluate.phase_temperature import STEP
from evaluate.roots import first_true

BELOW = 0.5  # [C] below the liquidus, where the primary solid is looked for


def liquidus(record):
    """Temperature at which the last solid is gone."""
    return _liquidus(record, record["composition_wt"])


def primary_from(record):
    """Weight percent of the element from which the phase is the first solid to form."""
    element = record["element"]

    def primary(amount):
        alloy = {**record["composition_wt"], element: amount}
        celsius = _liquidus(record, alloy) - BELOW
        state = library.soak(record, celsius=celsius, composition=alloy)
        return record["phase"] in library.present(state)

    low, high = record["search_weight_percent"]
    return first_true(primary, low, high, step=0.1, width=0.002)


def beside_change(record):
    """Weight percent of the element in the phase, beside a change of the phases.

    The change is where `appearing` appears; the phase is looked at `from_change` [C] of
    it: above 0 in the field where that phase is there, below 0 where it is not.
    """
    change = phase_temperature.appears({**record, "phase": record["appearing"]})
    state = library.soak(record, celsius=change + record["from_change"])
    return library.phase(state, record["phase"]).weight_percent[record["element"]]


def appearance_slope(record):
    """How the temperature of appearance moves when `changed` is made [C per wt%]."""
    element, start = record["element"], record["composition_wt"]
    end = {**start, **record["changed"]}
    rise = phase_temperature.appears({**record, "composition_wt": end})
    rise -= phase_temperature.appears(record)
    return rise / (end[element] - start[element])


def highest_together(record):
    """Highest temperature at which the solids of `together` are all there.

    Over all steels listed. Three solids of a ternary system meet the liquid there, if a
    steel lies inside their triangle.
    """
    tops = [_highest(record, alloy) for alloy in record["compositions_wt"]]
    found = [top for top in tops if top is not None]
    if not found:
        raise library.Absent(f"never together: {', '.join(record['together'])}")
    return max(found)


def _highest(record, alloy):
    def apart(celsius):
        state = library.soak(record, celsius=celsius, composition=alloy)
        return not set(record["together"]) <= set(library.present(state))

    low, high = record["search_celsius"]
    scan = [low + STEP * i for i in range(round((high - low) / STEP) + 1)]
    there = [celsius for celsius in scan if not apart(celsius)]
    return first_true(apart, there[-1], high, STEP) if there else None


def _liquidus(record, alloy):
    def molten(celsius):
        state = library.soak(record, celsius=celsius, composition=alloy)
        return set(library.present(state)) == {"liquid"}

    return first_true(molten, *record["search_celsius"], STEP)


ADDED = (liquidus, primary_from, beside_change, appearance_slope, highest_together)
KINDS.update({function.__name__: function for function in ADDED})

"""Temperatures at which a phase appears or vanishes, by scan and bisection."""

from . import library
from .roots import first_true

STEP = 10.0  # [C] of the scan


def appears(record):
    """Lowest temperature of the search range at which the phase has just appeared."""
    return _appears(record, record["composition_wt"])


def vanishes(record):
    """Temperature at which the phase is gone. Raises Absent if it is never there."""
    low, high = record["search_celsius"]
    name, composition = record["phase"], record["composition_wt"]
    count = round((high - low) / STEP)
    scan = [low + i * (high - low) / count for i in range(count + 1)]
    there = [t for t in scan if _has(record, composition, name, t)]
    if not there:
        raise library.Absent(f"no {name} between {low:g} and {high:g} C")
    return first_true(
        lambda t: not _has(record, composition, name, t), there[-1], high, STEP
    )


def appearance_shift(record):
    """What the element does to the appearance temperature [C per weight percent]."""
    element = record["element"]
    plain = {k: v for k, v in record["composition_wt"].items() if k != element}
    alloyed = _appears(record, record["composition_wt"])
    start = _appears(record, plain)
    return (alloyed - start) / record["composition_wt"][element]


def _appears(record, composition):
    low, high = record["search_celsius"]
    name = record["phase"]
    return first_true(lambda t: _has(record, composition, name, t), low, high, STEP)


def _has(record, composition, name, celsius):
    state = library.soak(record, celsius=celsius, composition=composition)
    return name in library.present(state)

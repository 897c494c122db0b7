#!/usr/bin/env python3
"""How the families of hardening_family.hpp follow from published records.

    python3 hardening_families.py

Prints, family by family: every record with a known austenite (`austenite_wt`) that the
family was fitted to, measured and computed; the offset or rate that follows; and how
far off the records are that were held back, those that need a soak for the most part.
For hardness (hardness_offsets.py) soaked records are fitted to as well, and the numbers
for hardening_family.cpp are printed with those of the library beside them.
tests/reference/test_hardening_families.py compares all of it with the library.
"""

from math import exp, log, sqrt
from statistics import mean, stdev

import gibbsteel as gs
import hardness_offsets
from evaluate import hardening, record_file
from evaluate.library import Absent

LEAST_START_ERROR = 30.0  # [C], that of Eq. (H12) itself
COLDEST = 20.0  # [C]
NOT_LONG_HELD = {"celsius_range", "measured_carbide", "minutes"}
NOT_SOAKED = {"austenite_wt", *NOT_LONG_HELD}
QUANTITIES = ("martensite_start", "retained_austenite", hardness_offsets.QUANTITY)


def chosen(family, quantity):
    """Records of one family that were fitted to, austenite known."""
    return [
        r
        for r in record_file.records()
        if r["quantity"] == quantity
        and r["fitted"]
        and "austenite_wt" in r
        and r["family"] == family.key
    ]


def held_back(family, quantity):
    """Records of one family that were not fitted to."""
    return [
        r
        for r in record_file.records()
        if r["quantity"] == quantity
        and not r["fitted"]
        and r["comparison"] == "within"
        and not NOT_LONG_HELD & set(r)
        and hardening.family_key(r) == family.key
    ]


def scatter(values):
    return stdev(values) if len(values) > 1 else 0.0


def spread(values, uncertainties):
    """Standard deviation of the next measurement."""
    own = scatter(values) ** 2 * (1.0 + 1.0 / len(values))
    return sqrt(own + mean(u * u for u in uncertainties))


def fit_start(family):
    """Offset, its scatter, error and number of records [C]; None without a record."""
    records = chosen(family, "martensite_start")
    if not records:
        return None
    off = [r["value"] - hardening.general_start(r) for r in records]
    error = max(LEAST_START_ERROR, spread(off, [r["uncertainty"] for r in records]))
    return mean(off), scatter(off), error, len(records)


def measured_fraction(record):
    """Of the matrix."""
    return record["value"] / (1.0 - record.get("carbide_fraction", 0.0))


def fit_retained(family):
    """Rate [1/C], error of the fraction, number of records; None without a record."""
    records = chosen(family, "retained_austenite")
    if not records:
        return None
    offset = fit_start(family)[0]
    starts = [
        r.get("martensite_start") or hardening.general_start(r) + offset
        for r in records
    ]
    below = [start - COLDEST for start in starts]
    found = [measured_fraction(r) for r in records]
    rate = mean(-log(f) / b for f, b in zip(found, below, strict=True))
    off = [f - exp(-rate * b) for f, b in zip(found, below)]
    return rate, spread(off, [r["uncertainty"] for r in records]), len(records)


def held_back_misses(family, quantity):
    """(record, computed, measured) of the records held back, in C or a fraction."""
    misses = []
    for record in held_back(family, quantity):
        try:
            computed = getattr(hardening, quantity)(record)
        except Absent:
            continue
        misses.append((record, computed, record["value"]))
    return misses


def in_band(quantity):
    """(inside, all): records that need a soak, against the band of the estimate."""
    inside = total = 0
    for record in record_file.records():
        if record["quantity"] != quantity or record["comparison"] != "within":
            continue
        if NOT_SOAKED & set(record):
            continue
        estimate = hardening.estimate(record)
        measured = record["value"] * (100.0 if estimate.unit == "vol%" else 1.0)
        inside += estimate.low <= measured <= estimate.high
        total += 1
    return inside, total


UNITS = {"martensite_start": ("C", 0), "retained_austenite": ("", 3)}


def lines(family, quantity, fitted):
    """The table of one family; `fitted`: what follows, or None."""
    unit, digits = UNITS[quantity]
    text = []
    if fitted:
        numbers = ", ".join(f"{number:.4g}" for number in fitted)
        text.append(f"  {quantity}: fitted {numbers}")
    for record in chosen(family, quantity):
        computed = getattr(hardening, quantity)(record)
        text.append(
            f"    {record['id']:<28} computed {computed:.{max(digits, 1)}f}, "
            f"measured {record['value']:g} +- {record['uncertainty']:g}"
        )
    misses = held_back_misses(family, quantity)
    for record, computed, measured in misses:
        text.append(
            f"    {record['id']:<28} held back: computed "
            f"{computed:.{digits}f}, measured {measured:.{digits}f} {unit}, "
            f"off by {computed - measured:+.{digits}f}"
        )
    if misses:
        rms = hardness_offsets.root_mean_square(misses)
        text.append(f"    held back: {len(misses)}, rms {rms:.{digits}f} {unit}")
    return text


def main():
    for family in gs.hardening_families():
        print(f"{family.name} ({family.key}): {family.rule}")
        print(
            f"  start {family.start_offset:+.0f} C, rate {family.transformation_rate}, "
            f"hardness {family.hardness_offset:+.0f} HV"
        )
        table = lines(family, "martensite_start", fit_start(family))
        table += lines(family, "retained_austenite", fit_retained(family))
        print(*table, *hardness_offsets.lines(family), sep="\n", end="\n\n")
    for quantity in QUANTITIES:
        inside, total = in_band(quantity)
        print(
            f"{quantity}: {inside} of {total} measurements in the band, soak included"
        )


if __name__ == "__main__":
    main()

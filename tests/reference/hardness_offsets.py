"""The offset of as-quenched hardness of a family, from measurements of some steels.

A measurement asks for the offset that makes the computed hardness the published one.
The mean over the measurements of one steel is taken first, then that over the steels,
so that a long series of one steel counts once. A measurement that stands in
`records.json` with a known austenite and by a soak counts once, with the known
austenite.

All measurements of a steel are fitted to, or none: the other steels say how far off the
family is. Soaks are those of the shipped file, so the offset also takes up what that
file has wrong, in the carbon of the austenite above all: it has to be computed again
for every edition.
"""

from dataclasses import dataclass
from math import sqrt
from statistics import mean

import gibbsteel as gs
from evaluate import hardening, record_file

QUANTITY = "as_quenched_hardness"


@dataclass(frozen=True)
class Fit:
    """What `hardening_family.cpp` states of one family."""

    offset: float  # [HV]; 0 without a record
    error: float  # standard deviation [HV]
    records: int
    steels: int
    soaked: int  # of the records, those whose austenite is computed


def measurements(family, fitted):
    """Records of one family, each measurement once."""
    found = [
        record
        for record in record_file.records()
        if record["quantity"] == QUANTITY
        and record["fitted"] is fitted
        and not {"measured_carbide", "minutes"} & set(record)
        and hardening.family_key(record) == family.key
    ]
    known_first = sorted(found, key=is_soaked)
    once = {}
    for record in known_first:
        published = record["published_record"], record["celsius"], record["value"]
        once.setdefault(published, record)
    return list(once.values())


def is_soaked(record):
    return "austenite_wt" not in record


def asked_for(record):
    """The offset that makes the computed hardness the published one [HV]."""
    vickers, counted = hardening.without_offset(record)
    return (gs.hv_from_hrc(record["value"]) - vickers) / counted


def by_steel(family):
    """{steel: offsets that its measurements ask for} of what is fitted to."""
    offsets = {}
    for record in measurements(family, fitted=True):
        offsets.setdefault(record["steel"], []).append(asked_for(record))
    return offsets


def held_back_misses(family, offset):
    """(record, computed with that offset, measured) of the other steels [HV]."""
    misses = []
    for record in measurements(family, fitted=False):
        vickers, counted = hardening.without_offset(record)
        measured = gs.hv_from_hrc(record["value"])
        misses.append((record, vickers + counted * offset, measured))
    return misses


def root_mean_square(misses):
    return sqrt(mean((computed - measured) ** 2 for _, computed, measured in misses))


def least_error():
    """That of the general equation: too few steels were held back to state less."""
    return gs.property_equations().at("martensite hardness", hardening.HARDNESS).error


def fit(family):
    """As a Fit, whether or not there is a record."""
    offsets = by_steel(family)
    offset = mean(mean(of_one) for of_one in offsets.values()) if offsets else 0.0
    misses = held_back_misses(family, offset)
    error = root_mean_square(misses) if misses else 0.0
    used = measurements(family, fitted=True)
    return Fit(
        offset=offset,
        error=max(error, least_error()),
        records=len(used),
        steels=len(offsets),
        soaked=sum(map(is_soaked, used)),
    )


def lines(family):
    """The table of one family, and what follows from it."""
    fitted = fit(family)
    text = [f"  {QUANTITY}:"]
    for record in measurements(family, fitted=True):
        how = "soaked" if is_soaked(record) else "known austenite"
        text.append(
            f"    {record['id']:<28} {record['steel']}, {how}: asks for "
            f"{asked_for(record):+.1f} HV"
        )
    for steel, offsets in by_steel(family).items():
        text.append(f"    mean of {steel}: {mean(offsets):+.1f} HV")
    misses = held_back_misses(family, fitted.offset)
    for record, computed, measured in misses:
        text.append(
            f"    {record['id']:<28} held back: computed {computed:.0f}, measured "
            f"{measured:.0f} HV, off by {computed - measured:+.0f}"
        )
    if misses:
        rms = root_mean_square(misses)
        text.append(f"    held back: {len(misses)}, rms {rms:.0f} HV")
    return [*text, *numbers(family, fitted)]


def numbers(family, fitted):
    """Lines for hardening_family.cpp, with what the library has now."""
    stated = {
        "hardness_offset": f"{fitted.offset:.1f}",
        "hardness_error": f"{fitted.error:.1f}",
        "hardness_records": fitted.records,
        "hardness_steels": fitted.steels,
        "hardness_soaked": fitted.soaked,
    }
    return [
        f"    {name} = {value} (library: {getattr(family, name):g})"
        for name, value in stated.items()
    ]

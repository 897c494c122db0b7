"""Martensite start, retained austenite and as-quenched hardness.

Two kinds of record. With `austenite_wt`, the austenite is known (measured, or there was
no carbide), and a miss is that of the equation and of the family alone: nothing is
soaked. Without it, the steel is soaked at `celsius`, and a miss is that of the chain.

With `measured_carbide` [vol%] the carbide is what was counted after a short soak, and
the austenite follows by balance of mass, as a shop should do it.

Where only the range of the soak is known, `celsius_range` stands in place of `celsius`,
and of what the range allows the value nearest to the published one is compared: a miss
says that no soak of the range gives it.
"""

import gibbsteel as gs

from . import library


def martensite_start(record):
    """[C]; reads `family` with `austenite_wt`."""
    if "austenite_wt" in record:
        return general_start(record) + family_of(record).start_offset
    if "celsius_range" in record:
        return nearest_start(record)
    return estimate(record).value


RANGE_POINTS = 5


def nearest_start(record):
    """The martensite start nearest to the published one that the range allows."""
    low, high = record["celsius_range"]
    step = (high - low) / (RANGE_POINTS - 1)
    soaks = [low + i * step for i in range(RANGE_POINTS)]
    starts = [estimate({**record, "celsius": celsius}).value for celsius in soaks]
    return min(max(record["value"], min(starts)), max(starts))


def retained_austenite(record):
    """Fraction of the matrix, or of the steel with `"of": "steel"`.

    With `austenite_wt`: reads `martensite_start` where it was measured, and
    `carbide_fraction` for a fraction of the steel.
    """
    if "austenite_wt" in record:
        start = record.get("martensite_start") or martensite_start(record)
        fraction = published_fraction(record, start) ** (
            family_of(record).transformation_rate / PUBLISHED_RATE
        )
        return fraction * (1.0 - record.get("carbide_fraction", 0.0))
    return estimate(record).value / 100.0


def as_quenched_hardness(record):
    """[HRC]; reads `retained` and `carbide` with `austenite_wt`."""
    if "austenite_wt" in record:
        vickers, counted = without_offset(record)
        offset = family_of(record).hardness_offset
        return gs.hrc_from_hv(vickers + counted * offset)
    return estimate(record).value


HARDNESS = "carbon-quadratic"  # Eq. (H18), to which the offset of a family is added


def without_offset(record):
    """(hardness without the offset of the family [HV], how much of the offset counts).

    An equation that is named is used without offset. Only austenite has it, and where
    less than half of that transforms, in proportion.
    """
    if "austenite_wt" in record:
        return general_hardness(record), fading(record["retained"])
    bare = _estimates(record, martensite_hardness=HARDNESS)
    austenite = bare.austenite_percent
    retained = bare.retained_austenite_of_matrix.value / austenite
    return bare.hardness_hv.value, 0.01 * austenite * fading(retained)


def fading(retained):
    """Of the offset, by the fraction of the austenite that stays."""
    return min(1.0, 2.0 * (1.0 - retained))


def family_of(record):
    """The family of a steel whose austenite is known."""
    return next(f for f in gs.hardening_families() if f.key == record["family"])


def family_key(record):
    """Of any record about hardening; chosen by composition, so any soak will do."""
    if "family" in record:
        return record["family"]
    celsius = record.get("celsius") or record["celsius_range"][0]
    return library.soak(record, celsius=celsius).hardening().family.key


def general_start(record):
    """Eq. (H12) without the offset of the family [C]."""
    equation = gs.property_equations().at("martensite start", "exponential-mean")
    return equation.value(gs.PropertyInput(record["austenite_wt"]))


PUBLISHED_RATE = 0.011  # [1/C], Koistinen & Marburger 1959


def published_fraction(record, start):
    """Eq. (H13) with the published rate, for a quench to 20 C."""
    equation = gs.property_equations().at("retained austenite", "koistinen-marburger")
    given = gs.PropertyInput(record["austenite_wt"], martensite_start=start)
    return equation.value(given)


def general_hardness(record):
    """Eq. (H18) and (H20) without the offset of the family [HV]."""
    equation = gs.property_equations().at("martensite hardness", HARDNESS)
    carbide = record["carbide"]
    total = sum(carbide.values())
    mean = sum(f * gs.carbide_hardness(kind) for kind, f in carbide.items()) / total
    return gs.quenched_hardness(
        martensite=equation.value(gs.PropertyInput(record["austenite_wt"])),
        austenite=record["retained"],
        carbide=total,
        carbide_hv=mean,
    )


def estimate(record):
    """The Estimate with its band, by soaking."""
    estimates = _estimates(record)
    if record["quantity"] == "martensite_start":
        return estimates.martensite_start
    if record["quantity"] == "as_quenched_hardness":
        return estimates.hardness_hrc
    if record.get("of") == "steel":
        return estimates.retained_austenite
    return estimates.retained_austenite_of_matrix


def _estimates(record, **choices):
    state = library.soak(record)
    if "measured_carbide" in record:
        counted, set_of_it = record["measured_carbide"], library.parameters()
        state = state.with_measured_carbide(counted, parameters=set_of_it).state
    coldest = record.get("coldest_celsius")
    estimates = state.hardening(coldest_celsius=coldest, **choices)
    if not estimates.martensite_start.known:
        raise library.Absent(estimates.martensite_start.remarks[-1])
    return estimates

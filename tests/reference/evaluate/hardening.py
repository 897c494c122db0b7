"""Martensite start, retained austenite and as-quenched hardness.

Two kinds of record. With `austenite_wt`, the composition of the austenite is known
(measured, or there was no carbide), and the miss is that of the equation and the family
alone. With `celsius`, the steel is soaked first, and the miss is that of the whole chain.
"""

import gibbsteel as gs

from . import library


def martensite_start(record):
    """[C]"""
    if "austenite_wt" in record:
        return start_of_austenite(record["austenite_wt"], _family(record))
    return _estimates(record).martensite_start.value


def retained_austenite(record):
    """Fraction of the matrix, or of the steel with `"of": "steel"`."""
    if "austenite_wt" in record:
        family = _family(record)
        start = start_of_austenite(record["austenite_wt"], family)
        return retained_fraction(record["austenite_wt"], start, family)
    estimates = _estimates(record)
    if record.get("of") == "steel":
        return estimates.retained_austenite.value / 100.0
    return estimates.retained_austenite_of_matrix.value / 100.0


def as_quenched_hardness(record):
    """[HRC]"""
    return _estimates(record).hardness_hrc.value


def general_start(austenite):
    """Eq. (H12) without the offset of any family [C]."""
    equation = gs.property_equations().at("martensite start", "exponential-mean")
    return equation.value(gs.PropertyInput(austenite))


def start_of_austenite(austenite, family):
    return general_start(austenite) + family.start_offset


def retained_fraction(austenite, start, family, coldest_celsius=20.0):
    """Eq. (H13) with the rate of the family."""
    equation = gs.property_equations().at("retained austenite", "koistinen-marburger")
    published = equation.value(
        gs.PropertyInput(
            austenite, martensite_start=start, coldest_celsius=coldest_celsius
        )
    )
    return published ** (family.transformation_rate / PUBLISHED_RATE)


PUBLISHED_RATE = 0.011  # [1/C], Koistinen & Marburger 1959


def _family(record):
    return next(f for f in gs.hardening_families() if f.key == record["family"])


def _estimates(record):
    state = library.soak(record)
    coldest = record.get("coldest_celsius")
    estimates = state.hardening(coldest_celsius=coldest)
    if not estimates.martensite_start.known:
        raise library.Absent(estimates.martensite_start.remarks[-1])
    return estimates

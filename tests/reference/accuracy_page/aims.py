"""Aims for hardened steels and where they stand: mean absolute misses."""

from . import groups
from .figures import figures, has_size, independent

HIGH_SPEED_AND_COLD_WORK = ("high-speed steels", "cold-work steels")
# Group, aim in its unit.
COMPOSITION = (
    ("all carbide [vol%]", 1.0),
    ("MC [vol%]", 0.5),
    ("C in the matrix [wt%]", 0.06),
    ("Cr in the matrix [wt%]", 0.4),
    ("Mo in the matrix [wt%]", 0.5),
    ("W in the matrix [wt%]", 0.5),
    ("V in the matrix [wt%]", 0.2),
)
HARDENING = (
    ("as-quenched hardness [HRC]", 1.5),
    ("retained austenite [%]", 6.0),
    ("martensite start [C]", 25.0),
)


TIMED = ", by the timed soak where there is one"


def is_chain(record):
    """Soaked first: not an equation alone with a known austenite."""
    return "austenite_wt" not in record


def timed(outcomes):
    """Number -> its outcome by the timed soak."""
    return {_number(o.record): o for o in outcomes if "minutes" in o.record}


def _number(record):
    return record["published_record"], record["quantity"], str(record["value"])


def about(outcomes, group, families=groups.STEELS):
    """Outcomes of hardened steels that the aim is about."""
    return [
        o
        for o in outcomes
        if groups.quantity_of(o.record) == group
        and groups.family_of(o.record) in families
        and groups.is_hardened(o.record)
        and is_chain(o.record)
        and has_size(o)
    ]


def rows(outcomes):
    """(what, aim, figures of all records, of those not fitted to, of sure ones)."""
    by_minutes = timed(outcomes)
    for aims, families in (
        (COMPOSITION, HIGH_SPEED_AND_COLD_WORK),
        (HARDENING, groups.STEELS),
    ):
        for group, aim in aims:
            chosen = about(outcomes, group, families)
            yield group, aim, *_figures(chosen)
            if aims is HARDENING:
                of_minutes = [by_minutes.get(_number(o.record), o) for o in chosen]
                yield group + TIMED, aim, *_figures(of_minutes)


def _figures(chosen):
    sure = [o for o in chosen if o.record["confidence"] != "low"]
    return map(figures, (chosen, independent(chosen), sure))

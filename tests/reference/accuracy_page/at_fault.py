"""What the misses rest on, and how far off the aims that leaves the file."""

from math import ceil

from .figures import figures
from .groups import STEELS, family_of
from .markdown import table

AIM_1, AIM_2 = 0.75, 0.93  # of all records, within one and two uncertainties
AIM_HIGH = 0.85  # of those of confidence high, within one
ALLOYED = 0.5  # [wt%] of an element whose terms in carbides are estimates
ESTIMATED = ("Mo", "W", "V", "Co", "Ni")
# Not steels, but off by a term that is an estimate.
ESTIMATES = ("systems/PC-05", "systems/GF-MK:Co3C")

PUBLISHED_TERMS = "file: Fe, Fe-C, Fe with one metal, Fe-Cr-C, pure carbides"
ESTIMATED_TERMS = "file: steels with Mo, W, V, Co or Ni (estimated terms too)"
SOURCES = "sources disagree with each other"
MINUTES = "a soak of minutes was measured, the long hold is computed"
EQUATIONS = "hardening: equation, or offset of the family"
# First words of an explanation -> group; "File" and "Chain, known" (the carbon of the
# file, carried on by the equations) go by the steel.
GROUPS = {
    "Sources disagree": SOURCES,
    "Published": SOURCES,
    "Formula": SOURCES,
    "Counted carbide": SOURCES,
    "Chain, long-hold limit": MINUTES,
    "Published, soak of minutes": MINUTES,
    "Equation": EQUATIONS,
    "Equation, and chain": EQUATIONS,
    "Chain": EQUATIONS,
}


def takes_estimates(record):
    if record["id"] in ESTIMATES:
        return True
    given = record.get("composition_wt", {})
    alloyed = any(given.get(e, 0.0) > ALLOYED for e in ESTIMATED)
    return family_of(record) in STEELS and alloyed


def group_of(record):
    """
    @throws KeyError  an explanation that begins with other words
    """
    first = record["explanation"].split(":")[0]
    if first in ("File", "Chain, known"):
        return ESTIMATED_TERMS if takes_estimates(record) else PUBLISHED_TERMS
    return GROUPS[first]


def missed_by_group(outcomes):
    """Group -> outcomes that miss, largest group first."""
    found = {}
    for outcome in outcomes:
        if outcome.verdict != "pass":
            found.setdefault(group_of(outcome.record), []).append(outcome)
    return dict(sorted(found.items(), key=lambda item: -len(item[1])))


def still_needed(outcomes):
    """How many more must be met: (of all, of confidence high, of all within two)."""
    f, g = figures(outcomes), figures(of_high(outcomes))
    return (
        max(0, ceil(AIM_1 * f.count) - f.within_1),
        max(0, ceil(AIM_HIGH * g.count) - g.within_1),
        max(0, ceil(AIM_2 * f.count) - f.within_2),
    )


def of_high(outcomes):
    return [o for o in outcomes if o.record["confidence"] == "high"]


def section(outcomes):
    groups = missed_by_group(outcomes)
    rows = [
        [group, len(some), len(of_high(some)), len(some) - figures(some).within_2]
        for group, some in groups.items()
    ]
    rows.append(["needed for the aims", *still_needed(outcomes)])
    text = (
        "Each missed record by the part that its explanation in `records.json` names. "
        f"The last row says how many more must be met for {percent(AIM_1)} of all "
        f"within one uncertainty, {percent(AIM_HIGH)} of those of confidence high, and "
        f"{percent(AIM_2)} within two.{out_of_reach(groups, outcomes)}"
    )
    header = ["what it rests on", "missed", "confidence high", "beyond 2"]
    return f"## What the misses rest on\n\n{text}\n\n{table(header, rows)}"


def percent(share):
    return f"{100.0 * share:.0f} %"


def out_of_reach(groups, outcomes):
    """A sentence where published terms alone keep the file from an aim."""
    _, needed, _ = still_needed(outcomes)
    others = [o for g, some in groups.items() if g != PUBLISHED_TERMS for o in some]
    left = len(of_high(others))
    if left >= needed:
        return ""
    return (
        " Calibration leaves published and recalled terms, the first group, as they "
        f"are: if all {left} records of confidence high in the other rows were met, "
        f"{percent(AIM_HIGH)} would still be missed, by {needed - left}."
    )

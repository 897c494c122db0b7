"""Compares a computed value with a published one. Nothing here knows metallurgy.

`comparison` of a record, and what passes:
  within   |computed - published| <= uncertainty (a number, or [below, above])
  factor   computed / published between 1 / uncertainty and uncertainty
  at_most  computed <= published + uncertainty (a number)
  at_least  computed >= published - uncertainty (a number)
  between  published = [low, high], nothing added
  sign     computed has the sign of published; its size is printed, not judged
  phases   computed phases = published ones, those listed under `optional` left open
"""

from dataclasses import dataclass
from math import inf, isfinite, log

from . import KINDS, Absent, NotComputed

PASS, MISS, NOT_COMPUTED = "pass", "miss", "not computed"


@dataclass(frozen=True)
class Outcome:
    record: dict
    computed: object  # number, list of phases, or None
    miss: float  # in units of the uncertainty, signed where that has a meaning
    verdict: str
    remark: str = ""


def judge(record):
    """Computes the record's quantity and compares."""
    try:
        computed = KINDS[record["quantity"]](record)
    except Absent as reason:
        return Outcome(record, None, inf, MISS, str(reason))
    except NotComputed as reason:
        return Outcome(record, None, inf, NOT_COMPUTED, str(reason))
    miss = _COMPARISONS[record["comparison"]](record, computed)
    passes = abs(miss) <= 1.0
    return Outcome(record, computed, miss, PASS if passes else MISS)


def _within(record, computed):
    uncertainty = record["uncertainty"]
    difference = computed - record["value"]
    if isinstance(uncertainty, list):
        uncertainty = uncertainty[0] if difference < 0.0 else uncertainty[1]
    return difference / uncertainty


def _factor(record, computed):
    return log(computed / record["value"]) / log(record["uncertainty"])


def _at_most(record, computed):
    excess = computed - record["value"] - record["uncertainty"]
    return 0.0 if excess <= 0.0 else inf


def _at_least(record, computed):
    lack = record["value"] - record["uncertainty"] - computed
    return 0.0 if lack <= 0.0 else inf


def _between(record, computed):
    low, high = record["value"]
    return (computed - 0.5 * (low + high)) / (0.5 * (high - low))


def _sign(record, computed):
    if not computed or computed != computed:
        return inf
    return 0.0 if (computed > 0.0) == (record["value"] > 0.0) else inf


def _phases(record, computed):
    required, optional = set(record["value"]), set(record.get("optional", []))
    right = required <= set(computed) <= required | optional
    return 0.0 if right else inf


def show(value):
    """A value as the scoreboard prints it."""
    if value is None:
        return "-"
    if isinstance(value, list):
        return " + ".join(show(v) if not isinstance(v, str) else v for v in value)
    return f"{value:.4g}" if isfinite(value) else str(value)


_COMPARISONS = {
    "within": _within,
    "factor": _factor,
    "at_most": _at_most,
    "at_least": _at_least,
    "between": _between,
    "sign": _sign,
    "phases": _phases,
}

"""Counts and averages over outcomes.

A miss without a size (a list of phases, a sign, a phase that is absent) counts in the
counts; averages leave it out.
"""

from dataclasses import dataclass
from math import inf, isfinite, nan

from .groups import scale_of


def by_group(outcomes, group_of):
    """Group -> its outcomes, in the order of first occurrence."""
    groups = {}
    for outcome in outcomes:
        groups.setdefault(group_of(outcome.record), []).append(outcome)
    return groups


def independent(outcomes):
    return [o for o in outcomes if not o.record["fitted"]]


def fitted(outcomes):
    return [o for o in outcomes if o.record["fitted"]]


@dataclass(frozen=True)
class Figures:
    count: int
    within_1: int
    within_2: int
    bias: float  # mean of signed misses, in uncertainties
    absolute: float  # mean of their sizes
    in_unit: float  # mean size in the unit of the quantity
    sized: int  # misses that have a size


def has_size(outcome):
    judged = outcome.record["comparison"] in ("within", "factor", "between")
    return judged and outcome.computed is not None and isfinite(outcome.miss)


def difference(outcome):
    """Computed less published, in the unit that the page shows."""
    published = outcome.record["value"]
    if isinstance(published, list):
        published = sum(published) / len(published)
    return (outcome.computed - published) * scale_of(outcome.record)


def figures(outcomes):
    sizes = [o for o in outcomes if has_size(o)]
    misses = [abs(o.miss) if has_size(o) else full(o) for o in outcomes]
    return Figures(
        count=len(outcomes),
        within_1=sum(m <= 1.0 for m in misses),
        within_2=sum(m <= 2.0 for m in misses),
        bias=mean(o.miss for o in sizes),
        absolute=mean(abs(o.miss) for o in sizes),
        in_unit=mean(abs(difference(o)) for o in sizes),
        sized=len(sizes),
    )


def full(outcome):
    """Right or wrong, without a size."""
    return 0.0 if outcome.verdict == "pass" else inf


def mean(numbers):
    numbers = list(numbers)
    return sum(numbers) / len(numbers) if numbers else nan


def worst(outcomes, count):
    """The largest misses that have a size, largest first."""
    sizes = [o for o in outcomes if has_size(o)]
    return sorted(sizes, key=lambda o: (-abs(o.miss), o.record["id"]))[:count]


def without_size(outcomes):
    """Records missed that have no size of the miss."""
    return [o for o in outcomes if o.verdict == "miss" and not has_size(o)]

"""Counts by published record: one of them may hold many numbers, or one equation many
points."""

from .figures import by_group, figures, fitted, independent
from .groups import quantity_of
from .markdown import share, table

LEAST = 3  # missed numbers that a record needs to be listed
TITLE = "## Each published record once"


def published(outcomes):
    """Published record -> its outcomes."""
    return by_group(outcomes, lambda record: record["published_record"])


def counted_once(outcomes):
    """(records, within 1, within 2): each number counts for its part of the record."""
    parts = [(figures(group), len(group)) for group in published(outcomes).values()]
    within_1 = sum(f.within_1 / size for f, size in parts)
    return len(parts), within_1, sum(f.within_2 / size for f, size in parts)


def cells(outcomes):
    records, *within = counted_once(outcomes)
    return [share(round(part), records) for part in within]


def missed(outcomes):
    """(record, numbers, missed outcomes), most missed first."""
    rows = []
    for name, group in published(outcomes).items():
        misses = [o for o in group if o.verdict != "pass"]
        if len(misses) >= LEAST:
            rows.append((name, len(group), misses))
    return sorted(rows, key=lambda row: (-len(row[2]), row[0]))


def section(outcomes):
    rows = [
        [name, *cells(some)]
        for name, some in (
            ("not fitted to", independent(outcomes)),
            ("fitted to", fitted(outcomes)),
            ("all published records", outcomes),
        )
    ]
    listed = missed(outcomes)
    total = sum(o.verdict != "pass" for o in outcomes)
    own = sum(len(misses) for *_, misses in listed)
    text = (
        "A published record of several numbers, or one equation at several points, "
        "counts once here, each of its numbers for its part. The second table has the "
        f"records with {LEAST} missed numbers or more: {own} of the {total} misses are "
        "theirs."
    )
    causes = [
        [f"`{name}`", misses[0].record["steel"], quantities(misses)]
        + [numbers, len(misses), misses[0].record.get("explanation", "")]
        for name, numbers, misses in listed
    ]
    header = ["record", "steel", "missed in", "numbers", "missed", "the first of them"]
    return "\n\n".join(
        [
            f"{TITLE}\n\n{text}",
            table(["", "within 1", "within 2"], rows),
            table(header, causes),
        ]
    )


def quantities(misses):
    return ", ".join(dict.fromkeys(quantity_of(o.record) for o in misses))

"""What a layer that changes terms does to records, before and after.

`before` and `after` are outcomes of the same records, in the same order.
"""

from accuracy_page.figures import figures
from accuracy_page.markdown import share, table

HEADER = ["records", "before: within 1", "within 2", "layer: within 1", "within 2"]


def counts(groups, before, after):
    """A table; @param groups  name -> whether a record, as it was after, belongs"""
    rows = []
    for name, chosen in groups.items():
        some = [chosen(outcome.record) for outcome in after]
        cells = []
        for outcomes in (before, after):
            f = figures([o for o, here in zip(outcomes, some) if here])
            cells += [share(f.within_1, f.count), share(f.within_2, f.count)]
        rows.append([name, *cells])
    return table(HEADER, rows)


def changed(before, after, was, now):
    """(words, record) of those whose verdict changed so."""
    return [
        (f"`{a.record['id']}` ({b.miss:+.1f} to {a.miss:+.1f})", a.record)
        for b, a in zip(before, after)
        if b.verdict == was and a.verdict == now
    ]


def gained(before, after):
    names = [words for words, _ in changed(before, after, "miss", "pass")]
    return f"Gained ({len(names)}; misses in uncertainties): {', '.join(names)}."


def lost(before, after, why):
    """@param why  function from a record to the reason"""
    found = changed(before, after, "pass", "miss")
    lines = [f"* {words}: {why(record)}" for words, record in found]
    return f"Lost ({len(lines)}), and why:\n\n" + "\n".join(lines)

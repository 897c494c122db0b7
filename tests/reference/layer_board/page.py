"""The tables in the page of a layer, thermo_data/layers/*.md."""

from math import isfinite

from accuracy_page.markdown import share, table
from evaluate.verdict import PASS, show

from .board import counts, systems

MARKS = "<!-- computed -->\n", "<!-- end of computed -->\n"


def tables(board, judged):
    """The part of the page that is computed."""
    parts = [_counts(board, judged), _systems(board, judged)]
    missed = [o for o in judged if o.verdict != PASS]
    return "\n\n".join([*parts, *([_misses(board, missed)] if missed else [])])


def write(board, judged):
    """Puts the tables between the two marks of the page."""
    begin, end = MARKS
    head, rest = board.page.read_text("utf-8").split(begin, 1)
    tail = rest.split(end, 1)[1]
    text = head + begin + tables(board, judged) + "\n" + end + tail
    board.page.write_text(text, encoding="utf-8")


def _counts(board, judged):
    rows = []
    for use, meaning in board.meaning.items():
        total, one, two = counts(judged, use)
        rows.append([meaning, share(one, total), share(two, total)])
    return table(["records", "within 1 uncertainty", "within 2"], rows)


def _systems(board, judged):
    rows = [
        [name, _short(board, use), f"{passed} of {total}"]
        for (name, use), (passed, total) in systems(judged).items()
    ]
    return table(["steel or system", "use", "within 1"], rows)


def _misses(board, missed):
    rows = [
        [
            f"`{o.record['id']}`",
            _short(board, o.record["use"]),
            show(o.computed),
            _published(o.record),
            f"{o.miss:+.1f}" if isfinite(o.miss) else "-",
            o.record.get("explanation", ""),
        ]
        for o in missed
    ]
    names = ["record", "use", "computed", "published", "misses by", "why"]
    return table(names, rows)


def _short(board, use):
    return board.meaning[use].split(":")[0]


def _published(record):
    comparison, value = record["comparison"], record["value"]
    if comparison == "sign":
        return "above 0" if value > 0 else "below 0"
    if comparison == "between":
        return "{:g} to {:g}".format(*value)
    if comparison in ("at_least", "at_most"):
        return f"{comparison.replace('_', ' ')} {show(value)}"
    return show(value)

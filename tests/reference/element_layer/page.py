"""The tables in thermo_data/layers/niobium_titanium_nitrogen.md."""

from math import isfinite

from accuracy_page.markdown import share, table
from evaluate.verdict import PASS, show

from . import board

PAGE = board.LAYER.with_suffix(".md")
MEANING = {
    "fit": "fitted to",
    "taken over": "what its terms were taken from",
    "held back": "held back: neither fitted to nor taken over",
}


def tables(judged):
    """The part of the page that is computed."""
    return "\n\n".join([_counts(judged), _systems(judged), _misses(judged)])


def text():
    return PAGE.read_text("utf-8")


def write(judged):
    """Puts the tables between the two marks of the page."""
    head, rest = text().split("<!-- computed -->\n", 1)
    tail = rest.split("<!-- end of computed -->\n", 1)[1]
    marks = "<!-- computed -->\n", "\n<!-- end of computed -->\n"
    PAGE.write_text(head + tables(judged).join(marks) + tail, encoding="utf-8")


def _counts(judged):
    rows = []
    for use, meaning in MEANING.items():
        total, one, two = board.counts(judged, use)
        rows.append([meaning, share(one, total), share(two, total)])
    return table(["records", "within 1 uncertainty", "within 2"], rows)


def _systems(judged):
    rows = [
        [name, MEANING[use].split(":")[0], f"{passed} of {total}"]
        for (name, use), (passed, total) in board.systems(judged).items()
    ]
    return table(["steel or system", "use", "within 1"], rows)


def _misses(judged):
    rows = [
        [
            f"`{o.record['id']}`",
            MEANING[o.record["use"]].split(":")[0],
            show(o.computed),
            _published(o.record),
            f"{o.miss:+.1f}" if isfinite(o.miss) else "-",
            o.record.get("explanation", ""),
        ]
        for o in judged
        if o.verdict != PASS
    ]
    names = ["record", "use", "computed", "published", "misses by", "why"]
    return table(names, rows)


def _published(record):
    if record["comparison"] == "sign":
        return "above 0" if record["value"] > 0 else "below 0"
    if record["comparison"] == "between":
        return "{:g} to {:g}".format(*record["value"])
    return show(record["value"])

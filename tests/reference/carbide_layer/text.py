"""The layer as a file, and the page about it."""

import json
from itertools import chain

import gibbsteel as gs
import numpy as np
from accuracy_page.markdown import number, table
from layer_board import change

from . import followers
from .added import added
from .data import TEST
from .numbers import moved

# A file holds 200 correlations, and layers on top need room: smaller ones are left out,
# and the others made smaller by a trace, or as far as being possible together takes.
MOST_CORRELATIONS = 120
MARGIN = 0.9995
HEAD = {
    "format": {"name": "gibbsteel parameter file", "version": 1},
    "title": "Carbides of tool steels, calibrated",
    "edition": "3",
    "licence": "CC0-1.0",
}


def largest_together(correlations):
    """The largest, times a factor that leaves their matrix no negative eigenvalue."""
    if not correlations:
        return []
    by_size = sorted(correlations, key=lambda c: -abs(c["coefficient"]))
    kept = [c for c in correlations if c in by_size[:MOST_CORRELATIONS]]
    ends = [[json.dumps(end) for end in c["between"]] for c in kept]
    place = {end: i for i, end in enumerate(sorted({*chain(*ends)}))}
    beside = np.zeros((len(place), len(place)))
    for c, (i, j) in zip(kept, ([place[end] for end in pair] for pair in ends)):
        beside[i, j] = beside[j, i] = c["coefficient"]
    factor = MARGIN / max(1.0, -np.linalg.eigvalsh(beside)[0])
    return [{**c, "coefficient": factor * c["coefficient"]} for c in kept]


def layer(fit):
    """Everything in one layer on edition 2026-11-25."""
    made, below = json.loads(fit.layer), added(HEAD)
    made["title"] = HEAD["title"]
    made["correlations"] = largest_together(made["correlations"])
    made["sources"] |= below["sources"]
    made["solidus_bounds"] = below["solidus_bounds"]
    made["sources"][followers.SOURCE] = {"citation": followers.CITATION}
    followed = {p: {"energy": v} for p, v in followers.of(moved(fit)).items()}
    for phases in (below["phases"], followed):
        for phase, properties in phases.items():
            for name, terms in properties.items():
                made["phases"].setdefault(phase, {}).setdefault(name, []).extend(terms)
    return lines(made) + "\n"


def lines(value, depth=0):
    """JSON with one record a line, like the files that the library writes."""
    plain = json.dumps(value, ensure_ascii=False)
    deep = depth < 4 and isinstance(value, (dict, list)) and len(plain) > 80
    if not deep or (isinstance(value, dict) and "on" in value):
        return plain
    pad, close = "  " * (depth + 1), "  " * depth
    if isinstance(value, list):
        body = [lines(v, depth + 1) for v in value]
        return "[\n" + ",\n".join(pad + b for b in body) + f"\n{close}]"
    body = [f"{json.dumps(k)}: {lines(v, depth + 1)}" for k, v in value.items()]
    return "{\n" + ",\n".join(pad + b for b in body) + f"\n{close}}}"


def numbers_section(fit):
    rows = [
        [n.text, number(n.before, 1), number(n.after, 1), number(n.deviation, 1)]
        + [number(n.prior_deviation, 1), number(n.ratio), "yes" if n.seen else "hardly"]
        for n in fit.numbers
    ]
    header = ["number", "before", "layer", "+-", "prior +-", "ratio", "seen"]
    return "## The numbers [J/mol, J/(mol K)]\n\n" + table(header, rows)


def steels_section(fit):
    rows = [
        [s.steel, s.count, number(s.before), number(s.fitted), number(s.predicted)]
        for s in fit.steels
    ]
    header = ["steel", "measurements", "before", "fitted", "predicted without it"]
    return (
        "## Leaving out one steel at a time\n\nRoot mean square of the misses, in "
        "uncertainties.\n\n" + table(header, rows)
    )


def misses_section(fit):
    rows = [
        ["fitted to", number(fit.rms_before()), number(fit.rms_after())],
        ["held back", number(fit.rms_before(True)), number(fit.rms_after(True))],
    ]
    return (
        f"{fit.status.capitalize()} after {fit.evaluations} evaluations, loss "
        f"{fit.loss}. Held back: {', '.join(TEST)}. Root mean square of the misses, in "
        "uncertainties:\n\n" + table(["measurements", "before", "layer"], rows)
    )


def is_test(record):
    return record["steel"] in TEST


def records_section(before, after, used):
    """Of all records of ACCURACY.md; @param used  ids that the layer was fitted to"""
    groups = {
        "fitted to here": lambda r: r["id"] in used,
        "of the steels held back": is_test,
        "all others": lambda r: r["id"] not in used and not is_test(r),
        "all": lambda r: True,
    }
    return "\n\n".join(
        [
            "## Records",
            change.counts(groups, before, after),
            change.gained(before, after),
            change.lost(before, after, lambda record: record["explanation"]),
        ]
    )

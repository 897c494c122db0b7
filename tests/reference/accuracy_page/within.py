"""How many records lie within one and two published uncertainties."""

from .figures import figures, fitted, independent
from .markdown import share, table

HEADER = ["not fitted to: within 1", "within 2"]
HEADER += ["fitted to: within 1", "within 2", "together: within 1", "within 2"]
CONFIDENCES = ("high", "medium", "low")


def of_confidence(outcomes, name):
    return [o for o in outcomes if o.record["confidence"] == name]


def row(name, outcomes):
    made = [name]
    for some in (independent(outcomes), fitted(outcomes), outcomes):
        f = figures(some)
        made += [share(f.within_1, f.count), share(f.within_2, f.count)]
    return made


def section(outcomes):
    rows = [row(name, of_confidence(outcomes, name)) for name in CONFIDENCES]
    rows.append(row("all", outcomes))
    title = "## Within one and two uncertainties\n\n"
    return title + table(["confidence", *HEADER], rows)

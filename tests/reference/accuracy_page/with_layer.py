"""One count over the records of the shipped file and those of the layer on it.

A record of the layer says how it was used; `tests/reference/element_layer/board.py`
judges it.
"""

from dataclasses import replace

from .markdown import table
from .within import CONFIDENCES, HEADER, of_confidence, row

PAGE = "layers/niobium_titanium_nitrogen.md"
TITLE = "## Shipped file and layer together"
ROW = "layer with niobium, titanium, nitrogen"


def counted(layered):
    """What the layer took over agrees as little by merit as what it was fitted to."""
    return [
        replace(o, record={**o.record, "fitted": o.record["use"] != "held back"})
        for o in layered
    ]


def twice(outcomes, layered):
    """Outcomes of the layer whose published number the shipped file has as well."""
    there = [_number(o.record) for o in outcomes]
    return [o for o in layered if _number(o.record) in there]


def _number(record):
    return record["published_record"], record.get("celsius"), record["value"]


def section(outcomes, layered):
    again = twice(outcomes, layered)
    layer = counted(layered)
    together = outcomes + counted([o for o in layered if o not in again])
    rows = [row("shipped file", outcomes), row(ROW, layer), row("together", together)]
    for name in CONFIDENCES:
        some = of_confidence(together, name)
        rows.append(row(f"together, confidence {name}", some))
    return "\n\n".join([_text(layered, again), table(["records", *HEADER], rows)])


def _text(layered, again):
    recalled = sum(o.record["from_memory"] for o in layered)
    sentences = [
        f"The [layer with niobium, titanium and nitrogen]({PAGE}) ships beside the "
        f"file and acts only where it is loaded. Its {len(layered)} records are "
        'computed with it: what it was fitted to or took over as it stands is "fitted '
        'to", what it held back is "not fitted to", though its page names changes '
        "that were made after a first look.",
        "Where several authors published an equation for one quantity, each equation "
        f"counts, at each temperature; {recalled} records are quoted from memory, "
        "some of them common practice without a paper.",
    ]
    if again:
        names = ", ".join(f"`{o.record['id']}`" for o in again)
        sentences.append(
            "A number that is a record of the shipped file as well counts once in the "
            f"rows of what is together, as the shipped file computes it: {names}."
        )
    return f"{TITLE}\n\n{' '.join(sentences)}"

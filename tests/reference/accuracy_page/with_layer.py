"""One count over the records of the shipped file and those of the layers on it.

A record of a layer says how it was used; `tests/reference/layer_board` judges it. Here
`layered` lists (board, outcomes) of each layer.
"""

from dataclasses import replace

from .markdown import table
from .within import CONFIDENCES, HEADER, of_confidence, row

TITLE = "## Shipped file and layers together"
IRON = """### On iron as measured

The [layer with iron as measured](layers/iron_as_measured.md) changes three published
numbers, of Fe-C and Fe-Co, and adds two, of Fe-C and Fe-Cr-C. It has no records of its
own: these are those above, computed with it below the others, and with the melt that
goes with it. What it was fitted to counts as fitted to."""


def counted(judged):
    """What a layer took over agrees as little by merit as what it was fitted to."""
    return [replace(o, record={**o.record, "fitted": _is_fitted(o)}) for o in judged]


def _is_fitted(outcome):
    return outcome.record["fitted"] or outcome.record["use"] != "held back"


def twice(outcomes, judged):
    """Outcomes of a layer whose published number is among the others as well."""
    there = [_number(o.record) for o in outcomes]
    return [o for o in judged if _number(o.record) in there]


def _number(record):
    return record["published_record"], record.get("celsius"), record["value"]


def section(outcomes, layered, on_iron=()):
    """
    @param layered  (board, outcomes) of each layer
    @param on_iron  (name, outcomes) of the file and each layer, on iron as measured;
        none: the page leaves them out
    """
    parts = [("shipped file", outcomes)]
    parts += [(board.name, counted(judged)) for board, judged in layered]
    rows, again = added_up(parts)
    texts = [_text(layered, again), table(["records", *HEADER], rows)]
    if on_iron:
        iron, _ = added_up([(name, counted(judged)) for name, judged in on_iron])
        texts += [IRON, table(["records", *HEADER], iron)]
    return "\n\n".join(texts)


def added_up(parts):
    """(rows, outcomes left out); @param parts  (name, outcomes), counted once"""
    rows, together, again = [], [], []
    for name, judged in parts:
        rows.append(row(name, judged))
        same = twice(together, judged)
        together += [o for o in judged if o not in same]
        again += same
    rows.append(row("together", together))
    for name in CONFIDENCES:
        some = of_confidence(together, name)
        rows.append(row(f"together, confidence {name}", some))
    return rows, again


def _text(layered, again):
    shipped = " and ".join(
        f"the [{board.name}](layers/{board.page.name}) with {len(judged)} records of "
        "its own"
        for board, judged in layered
    )
    recalled = sum(o.record["from_memory"] for _, judged in layered for o in judged)
    sentences = [
        f"Beside the file ship {shipped}. A layer acts only where it is "
        "loaded, and its records are computed with it: what it was fitted to or took "
        'over as it stands is "fitted to", what it held back is "not fitted to", '
        "though its page names changes that were made after a first look.",
        "Where several authors published an equation for one quantity, each equation "
        f"counts, at each temperature; {recalled} records of layers are quoted from "
        "memory, some of them common practice without a paper.",
    ]
    if again:
        names = ", ".join(f"`{o.record['id']}`" for o in again)
        sentences.append(
            "A number that is a record of the shipped file, or of a layer before, as "
            "well counts once in the rows of what is together, as that one computes "
            f"it: {names}."
        )
    return f"{TITLE}\n\n{' '.join(sentences)}"

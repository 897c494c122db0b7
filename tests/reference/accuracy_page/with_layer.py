"""One count over the records of the shipped file and those of the layers on it.

A record of a layer says how it was used; `tests/reference/layer_board` judges it. Here
`layered` lists (board, outcomes) of each layer.
"""

from dataclasses import replace

from .markdown import table
from .within import CONFIDENCES, HEADER, of_confidence, row

TITLE = "## Shipped file and layers together"


def counted(judged):
    """What a layer took over agrees as little by merit as what it was fitted to."""
    return [
        replace(o, record={**o.record, "fitted": o.record["use"] != "held back"})
        for o in judged
    ]


def twice(outcomes, judged):
    """Outcomes of a layer whose published number is among the others as well."""
    there = [_number(o.record) for o in outcomes]
    return [o for o in judged if _number(o.record) in there]


def _number(record):
    return record["published_record"], record.get("celsius"), record["value"]


def section(outcomes, layered):
    rows, together, again = [row("shipped file", outcomes)], list(outcomes), []
    for board, judged in layered:
        rows.append(row(board.name, counted(judged)))
        same = twice(together, judged)
        together += counted([o for o in judged if o not in same])
        again += same
    rows.append(row("together", together))
    for name in CONFIDENCES:
        some = of_confidence(together, name)
        rows.append(row(f"together, confidence {name}", some))
    return "\n\n".join([_text(layered, again), table(["records", *HEADER], rows)])


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

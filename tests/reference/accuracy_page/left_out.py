"""Published records that are not compared with the shipped file, and why.

The reason of a record that needs a layer begins with `lacking` of the layer's board; a
second sentence says why it is not compared with the layer either. `layered` lists
(board, outcomes) of each layer.
"""

from collections import Counter

from .markdown import table


def lacking(left_out, board):
    """Those that need what this layer adds."""
    return [n for n, reason in left_out.items() if reason.startswith(board.lacking)]


def with_layer(left_out, board, judged):
    """Those of them that are compared with the layer."""
    there = {o.record["published_record"] for o in judged}
    return [name for name in lacking(left_out, board) if name in there]


def section(left_out, layered):
    compared = {name for pair in layered for name in with_layer(left_out, *pair)}
    by_reason = {}
    for name, reason in left_out.items():
        whole = reason + " Compared with the layer." * (name in compared)
        by_reason.setdefault(whole, []).append(name)
    counts = Counter({reason: len(names) for reason, names in by_reason.items()})
    rows = [
        [n, reason, ", ".join(f"`{name}`" for name in by_reason[reason])]
        for reason, n in counts.most_common()
    ]
    parts = ["## Published records that cannot be compared"]
    if layered:
        parts.append(_text(left_out, layered, compared))
    return "\n\n".join([*parts, table(["records", "reason", "which"], rows)])


def _text(left_out, layered, compared):
    sentences = [
        f"{len(left_out)} are not compared with the shipped file, "
        f"{len(left_out) - len(compared)} neither with it nor with a layer."
    ]
    for board, judged in layered:
        need, own = lacking(left_out, board), with_layer(left_out, board, judged)
        records = sum(o.record["published_record"] in own for o in judged)
        sentences.append(
            f"{len(need)} of the {len(left_out)} need {board.need}: {len(own)} of "
            f"these are compared with the {board.name}, by {records} of its "
            f"{len(judged)} records, and {len(need) - len(own)} are not."
        )
    return " ".join(sentences)

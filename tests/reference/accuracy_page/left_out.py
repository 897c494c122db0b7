"""Published records that are not compared with the shipped file, and why."""

from collections import Counter

from .markdown import table

# Reasons begin so; a second sentence says why the layer is not compared either.
LACKING = "Ti, Nb, Al and N are not elements of the file."


def lacking(left_out):
    """Those that need an element which the shipped file does not have."""
    return [name for name, reason in left_out.items() if reason.startswith(LACKING)]


def with_layer(left_out, layered):
    """Those of them that are compared with the layer."""
    there = {o.record["published_record"] for o in layered}
    return [name for name in lacking(left_out) if name in there]


def section(left_out, layered):
    compared = with_layer(left_out, layered)
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
        parts.append(_text(left_out, layered))
    return "\n\n".join([*parts, table(["records", "reason", "which"], rows)])


def _text(left_out, layered):
    need, compared = lacking(left_out), with_layer(left_out, layered)
    records = sum(o.record["published_record"] in compared for o in layered)
    return (
        f"{len(left_out)} are not compared with the shipped file, "
        f"{len(left_out) - len(compared)} neither with it nor with the layer. "
        f"{len(need)} of the {len(left_out)} need an element that the file does not "
        f"have: {len(compared)} of these are compared with the layer, by {records} of "
        f"its {len(layered)} records, and {len(need) - len(compared)} are not."
    )

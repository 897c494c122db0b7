"""The part of the accuracy page about directions."""

from accuracy_page.markdown import table

from .changes import WORDS, read

HEAD = """## Cobalt, silicon, manganese, nickel: which way

What a little more of an element, in place of iron, does to a soaked steel, against what
practice or published work expects. Only the direction is judged. A wrong one stays here
with its number. Nothing was fitted to these directions."""


def signed(value):
    if abs(value) < 5e-5:
        return "0.0000"
    return f"{value:+.4f}" if abs(value) < 0.1 else f"{value:+.2f}"


def signs_section(changes):
    judged = [c for c in changes if c.judged]
    right = sum(c.right for c in judged)
    rows = [
        [
            c.row["steel"],
            f"{c.row['celsius']:g}",
            f"+{c.row['add']:g} {c.row['element']}",
        ]
        + [c.row["quantity"], WORDS[c.row["sign"]], signed(c.size)]
        + [verdict(c), c.row["reason"]]
        for c in changes
    ]
    header = ["steel", "C", "more", "quantity", "expected", "computed", "is", "reason"]
    parts = [
        HEAD,
        f"{right} of {len(judged)} directions are right. {idle(changes)}".strip(),
        table(header, rows),
    ]
    parts += [wrong_ones(changes), reasons()]
    return "\n\n".join(part for part in parts if part)


def verdict(change):
    if not change.judged:
        return "no carbide"
    return "right" if change.right else "**wrong**"


def idle(changes):
    count = sum(not c.judged for c in changes)
    if not count:
        return ""
    return (
        f"In {count} rows neither steel holds carbide, so that nothing can dissolve or "
        "form: those are not judged."
    )


def wrong_ones(changes):
    lines = [
        f"* {c.row['id']}: {signed(c.size)}. {c.row.get('wrong_now', 'Not explained.')}"
        for c in changes
        if c.judged and not c.right
    ]
    return "Wrong:\n\n" + "\n".join(lines) if lines else ""


def reasons():
    lines = [
        f"* **{key}**: {entry['why']} Source: {entry['source']} Confidence "
        f"{entry['confidence']}."
        for key, entry in read()["reasons"].items()
    ]
    return "Reasons:\n\n" + "\n".join(lines)

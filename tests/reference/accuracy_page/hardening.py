"""Hardening by family of the library, and which part of the chain is at fault."""

from evaluate.hardening import family_key

from . import groups
from .figures import difference, figures, fitted, has_size, independent, mean
from .markdown import number, table

HEAD = """## Hardening by family, and what is at fault

Families are those of `hardening_family.hpp`. Bias is computed less published, and mean
miss its size, in C, percent or HRC. "Known" austenite was measured, or no carbide was
left: the miss is that of equation and family. "Soaked" is the chain of soak and
equation, "counted" a short soak whose carbide was counted, "timed" a timed
soak, "range" a soak of which only the range is known. Hardness of a family is fitted
to soaked records too, by whole steels (`hardness_offsets.py` beside the records): its
offset also takes up what the file has wrong in the carbon of the austenite, so hardness
that agrees is no evidence for that carbon."""
HOW = {
    "minutes": "timed",
    "austenite_wt": "known",
    "celsius_range": "range",
    "measured_carbide": "counted",
}


def how(record):
    """How the austenite of a record came about."""
    return next((word for key, word in HOW.items() if key in record), "soaked")


def chosen(outcomes):
    return [
        o for o in outcomes if o.record["quantity"] in groups.QUENCHED and has_size(o)
    ]


def hardening_section(outcomes):
    found = chosen(outcomes)
    return "\n\n".join([HEAD, family_table(found), fault_table(found)])


def family_table(found):
    by_key = {}
    for outcome in found:
        record = outcome.record
        name = groups.NAMES[record["quantity"]]
        by_key.setdefault((name, family_key(record), how(record)), []).append(outcome)
    rows = [[*key, *cells(by_key[key])] for key in sorted(by_key)]
    header = ["quantity", "family", "austenite", "not fitted to", "bias", "mean miss"]
    return table([*header, "fitted to", "bias", "mean miss"], rows)


def cells(outcomes):
    made = []
    for some in (independent(outcomes), fitted(outcomes)):
        made += [len(some), number(bias(some), 1), number(figures(some).in_unit, 1)]
    return made


def bias(outcomes):
    """In the unit of the page; of a published range from its middle."""
    return mean(difference(outcome) for outcome in outcomes)


def fault_of(record):
    """The first words of the explanation: up to a comma or colon."""
    return record.get("explanation", "Not explained").split(":")[0].split(",")[0]


def fault_table(found):
    by_fault = {}
    for outcome in found:
        if outcome.verdict != "pass":
            by_fault.setdefault(fault_of(outcome.record), []).append(outcome)
    rows = [
        [fault, len(some), ", ".join(f"`{o.record['id']}`" for o in some)]
        for fault, some in sorted(by_fault.items(), key=lambda item: -len(item[1]))
    ]
    words = (
        "Misses beyond one uncertainty by the part that their explanation in "
        "`records.json` names."
    )
    return words + "\n\n" + table(["at fault", "records", "which"], rows)

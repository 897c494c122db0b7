"""Changes of a soaked steel by more of one element, computed, against their direction.

Iron gives way to the element. A direction is right when the computed change has its
sign; its size is printed and not judged. What rounding does is no change. Where neither
steel holds carbide, nothing can dissolve or form, and the row is not judged.
"""

import json
from dataclasses import dataclass
from math import nan
from pathlib import Path

from evaluate import library

FILE = Path(__file__).resolve().parent / "table.json"
WORDS = {1: "rises", -1: "falls"}
ROUNDING = 1e-9  # of the value before; a smaller change is none


def volume(kind):
    def value(state):
        return sum(o.volume_percent for o in state.occurrences if o.kind == kind)

    return value


def cobalt_out_of_carbide(state):
    """How much richer the matrix is than the steel."""
    inside, all_of_it = state.matrix.weight_percent, state.analysis.modelled
    return inside.get("Co", 0.0) - all_of_it.get("Co", 0.0)


# Name in the table -> value of a state. Amounts in vol% of the steel, contents in wt%.
QUANTITIES = {
    "matrix C [wt%]": lambda state: state.matrix.weight_percent["C"],
    "matrix V [wt%]": lambda state: state.matrix.weight_percent["V"],
    "carbide [vol%]": lambda state: state.carbide_volume_percent,
    "MC [vol%]": volume("MC"),
    "M6C [vol%]": volume("M6C"),
    "ferrite [vol%]": volume("ferrite"),
    "carbon activity": lambda state: state.carbon_activity,
    "Co in matrix - in steel [wt%]": cobalt_out_of_carbide,
    "martensite start [C]": lambda state: state.hardening().martensite_start.value,
    "retained austenite [vol%]": lambda state: (
        state.hardening().retained_austenite.value
    ),
}

OF_CARBIDE = ("matrix C [wt%]", "carbide [vol%]")  # move only while carbide is there


@dataclass(frozen=True)
class Change:
    row: dict
    before: float
    after: float
    carbide: bool = True  # in one of the two at least

    @property
    def judged(self):
        return self.carbide or self.row["quantity"] not in OF_CARBIDE

    @property
    def size(self):
        return self.after - self.before

    @property
    def right(self):
        """Of the direction that is expected; no change at all is wrong."""
        none = abs(self.size) <= ROUNDING * abs(self.before)
        return not none and self.size * self.row["sign"] > 0.0


def read():
    return json.loads(FILE.read_text(encoding="utf-8"))


def rows():
    """Every row, with its composition, reason and source filled in."""
    whole = read()
    return [
        {
            **row,
            "composition_wt": whole["steels"][row["steel"]],
            **whole["reasons"][row["reason"]],
            "id": name_of(row),
        }
        for row in whole["rows"]
    ]


def name_of(row):
    what = row["quantity"].split(" [")[0]
    return (
        f"{row['steel']}, {row['celsius']:g} C, +{row['add']:g}{row['element']}: {what}"
    )


def problems(row):
    """What is wrong with a row of the table, in words."""
    found = []
    if row["quantity"] not in QUANTITIES:
        found.append(f"no quantity '{row['quantity']}'")
    if row["sign"] not in WORDS:
        found.append("'sign' must be 1 or -1")
    if not row["add"] > 0.0:
        found.append("'add' must be above 0")
    if len(row["why"]) < 40 or not row["source"]:
        found.append("reason or source is missing")
    if row["confidence"] not in ("high", "medium", "low"):
        found.append("'confidence' must be high, medium or low")
    return found


def change(row):
    """Raises NotComputed where a soak has no usable answer."""
    composition = row["composition_wt"]
    element = row["element"]
    richer = {**composition, element: composition.get(element, 0.0) + row["add"]}
    states = [
        library.soak({}, celsius=row["celsius"], composition=c)
        for c in (composition, richer)
    ]
    before, after = map(QUANTITIES[row["quantity"]], states)
    carbide = any(state.carbide_volume_percent > 0.0 for state in states)
    return Change(row, before if before is not None else nan, after, carbide)


def changes():
    return [change(row) for row in rows()]


def line(found):
    row = found.row
    verdict = "right" if found.right else "WRONG" if found.judged else "no carbide"
    known = " (known)" if "wrong_now" in row else ""
    return (
        f"{row['id']:<68} {found.before:>9.4g} {found.size:>+9.4f}  "
        f"expected: {WORDS[row['sign']]:<6} {verdict}{known}"
    )

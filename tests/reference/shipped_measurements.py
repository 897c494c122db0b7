#!/usr/bin/env python3
"""Writes thermo_data/published_measurements.json: records that ship with the library.

    python3 shipped_measurements.py            writes the file that ships
    python3 shipped_measurements.py --check    says whether it is what would be written

Records of records.json about a steel soaked at a stated temperature, whose quantity is
one of those that a measurement file knows. A published range becomes its middle with
half of it as uncertainty. Nothing is computed here.
"""

import json
import re
import sys
from pathlib import Path

import shipped_file
from evaluate import record_file

SHIPPED = (
    Path(__file__).resolve().parents[2] / "thermo_data" / "published_measurements.json"
)
# Not the long hold at a stated temperature, or about an austenite that was measured.
OTHER_SOAKS = ("minutes", "measured_carbide", "austenite_wt", "celsius_range")
PERCENT_IN = {"volume_fraction": "volume percent", "mass_fraction": "mass percent"}
AS_ANOTHER = re.compile(r"(?P<part>[^:]+): as (?P<other>[\w:-]+)")
HEAD = {
    "format": {"name": "gibbsteel measurement file", "version": 1},
    "title": "Published measurements of soaked steels",
    "licence": "CC0-1.0",
}


def quantity_of(record):
    """Keys `quantity`, `in`, `of`, `unit`, and the factor; None: no such quantity."""
    kind = record["quantity"]
    if kind == "weight_percent":
        part = {"in": record["phase"], "of": record["element"]}
        return {"quantity": "weight percent", **part, "unit": "wt%"}, 1.0
    if kind in PERCENT_IN:
        unit = "vol%" if kind == "volume_fraction" else "mass%"
        part = {"quantity": PERCENT_IN[kind], "in": record["phase"], "unit": unit}
        return part, 100.0
    if kind == "martensite_start":
        return {"quantity": "martensite start", "unit": "C"}, 1.0
    if kind == "as_quenched_hardness":
        return {"quantity": "hardness HRC", "unit": "HRC"}, 1.0
    if kind == "retained_austenite":
        of_matrix = "" if record.get("of") == "steel" else " of the matrix"
        return {"quantity": "retained austenite" + of_matrix, "unit": "vol%"}, 100.0
    return None


def ships(record):
    return (
        record["comparison"] in ("within", "between")
        and record.get("celsius") is not None
        and "composition_wt" in record
        and set(record.get("soak", {})) <= {"phases"}
        and not any(key in record for key in OTHER_SOAKS)
        and not record["id"].startswith("systems/")
        and quantity_of(record) is not None
    )


def numbers_of(record, factor):
    """The value and its uncertainty, in percent where the record has a fraction."""
    value = record["value"]
    if record["comparison"] == "between":
        low, high = value
        value, uncertainty = 0.5 * (low + high), 0.5 * (high - low)
    else:
        given = record["uncertainty"]
        uncertainty = max(given) if isinstance(given, list) else given
    return {
        "value": round(value * factor, 10),
        "uncertainty": round(uncertainty * factor, 10),
    }


def remark_of(record, explanations):
    """Its explanation; "as <record>" is replaced by what stands there."""
    text = record["explanation"]
    found = AS_ANOTHER.match(text)
    table = record["id"].split("/")[0]
    other = explanations.get(f"{table}/{found['other']}") if found else None
    if other is None:
        return text
    other = other.removesuffix(".")
    rest = text[found.end() :]
    return f"{found['part']}: {other.partition(': ')[2]}{rest}"


def entry(record, source, explanations):
    quantity, factor = quantity_of(record)
    coldest = record.get("coldest_celsius")
    missed = record["id"] in explanations
    return {
        "record": record["id"],
        "steel": record["steel"],
        "weight_percent": record["composition_wt"],
        "celsius": record["celsius"],
        **({"phases": record["soak"]["phases"]} if "soak" in record else {}),
        **({} if coldest is None else {"coldest_celsius": coldest}),
        **quantity,
        **numbers_of(record, factor),
        "confidence": record["confidence"],
        "quoted": "from memory" if record["from_memory"] else "from print",
        "fitted_to": "yes" if record["fitted"] else "no",
        "source": source,
        **({"remark": remark_of(record, explanations)} if missed else {}),
    }


def written():
    """The text of the file: one measurement a line."""
    records = record_file.records()
    explanations = {r["id"]: r["explanation"] for r in records if "explanation" in r}
    chosen = [r for r in records if ships(r)]
    citations = list(dict.fromkeys(r["source"] for r in chosen))
    keys = {citation: f"s{i}" for i, citation in enumerate(citations, start=1)}
    sources = {key: citation for citation, key in keys.items()}
    lines = [dumped(entry(r, keys[r["source"]], explanations)) for r in chosen]
    head = json.dumps({**HEAD, "sources": sources}, ensure_ascii=False, indent=2)
    return (
        head.removesuffix("\n}")
        + ',\n  "measurements": [\n    '
        + ",\n    ".join(lines)
        + "\n  ]\n}\n"
    )


def dumped(value):
    return json.dumps(value, ensure_ascii=False)


def main(arguments=None):
    text = written()
    summary = f"{len(json.loads(text)['measurements'])} measurements"
    return shipped_file.main(
        arguments, __doc__.splitlines()[0], SHIPPED, text, summary
    )


if __name__ == "__main__":
    sys.exit(main())

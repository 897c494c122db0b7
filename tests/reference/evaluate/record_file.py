"""Reads the data files of this folder and refuses malformed ones."""

import json
from pathlib import Path

from . import KINDS

FOLDER = Path(__file__).resolve().parent.parent
REQUIRED = {
    "id": str,
    "published_record": str,
    "steel": str,
    "quantity": str,
    "comparison": str,
    "value": (int, float, list),
    "unit": str,
    "source": str,
    "from_memory": bool,
    "confidence": str,
    "fitted": bool,
    "note": str,
}


def records():
    """All records, in the order of the file."""
    return _read("records.json")["records"]


def left_out():
    """Published records that are not compared with: id -> reason."""
    return _read("left_out.json")


def frozen():
    """{"passes": ids that passed, "computed": ids that had a computed value}."""
    return _read("frozen.json")


def write_frozen(passes, computed):
    text = json.dumps({"passes": passes, "computed": computed}, indent=1)
    (FOLDER / "frozen.json").write_text(text + "\n", encoding="utf-8")


def problems(record):
    """What is wrong with one record, in words; empty when it is sound."""
    found = []
    for key, kind in REQUIRED.items():
        if not isinstance(record.get(key), kind):
            found.append(f"'{key}' missing or of the wrong kind")
    if record.get("quantity") not in KINDS:
        found.append(f"no quantity '{record.get('quantity')}'")
    if record.get("comparison") not in ("phases", "sign", "between"):
        found.extend(_uncertainty_problems(record.get("uncertainty")))
    if record.get("confidence") not in ("high", "medium", "low"):
        found.append("'confidence' must be high, medium or low")
    return found


def _uncertainty_problems(uncertainty):
    numbers = uncertainty if isinstance(uncertainty, list) else [uncertainty]
    if all(isinstance(n, (int, float)) and n >= 0.0 for n in numbers):
        return []
    return ["'uncertainty' must be a number >= 0 or [below, above]"]


def _read(name):
    return json.loads((FOLDER / name).read_text(encoding="utf-8"))

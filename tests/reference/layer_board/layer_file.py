"""Reads and writes a layer: a term a line, so that two editions can be compared."""

import json
from pathlib import Path

_OPEN = {"sources", "elements", "curves", "phases", "energy", "room_volume"}
_OPEN |= {"hot_volume", "weight_percent"}
_LINES = ("magnetism", "second_occurrence")  # and terms, sources, correlations


def read(file):
    return json.loads(Path(file).read_text("utf-8"))


def write(layer, file):
    Path(file).write_text(_text(layer, "", 0) + "\n", encoding="utf-8")


def _text(value, key, depth):
    if (
        not isinstance(value, (dict, list))
        or not value
        or _on_one_line(value, key, depth)
    ):
        return json.dumps(value)
    pad, close = "  " * (depth + 1), "  " * depth
    if isinstance(value, dict):
        items = [f"{json.dumps(k)}: {_text(v, k, depth + 1)}" for k, v in value.items()]
        return "{\n" + ",\n".join(pad + item for item in items) + "\n" + close + "}"
    items = [_text(item, "", depth + 1) for item in value]
    return "[\n" + ",\n".join(pad + item for item in items) + "\n" + close + "]"


def _on_one_line(value, key, depth):
    """Terms, sources, elements, curves and rules take one line each."""
    if isinstance(value, list):
        return not any(isinstance(item, dict) for item in value)
    if {"on", "citation", "between"} & set(value) or key in ("format", *_LINES):
        return True
    return depth > 2 and key not in _OPEN and not _OPEN & set(value)

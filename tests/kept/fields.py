"""What a value says of itself, as JSON: every public property, down to the last bit."""

from __future__ import annotations

import math
from typing import Any

import gibbsteel as gs
import numpy as np

# Kept by what a pickle holds. A family travels as its key and a set of equations
# as the user's own; the rest is data of the version that reads.
CHOSEN = {
    "ParameterSet": ("content_hash", "elements", "phases"),
    "HardeningFamily": ("key",),
    "PropertyEquations": (),
}
MODULES = ("gibbsteel._core", "gibbsteel.steel")


def properties_of(value: object) -> list[str]:
    """Names of the public properties of a value of this library."""
    kind = type(value)
    if kind.__name__ in CHOSEN:
        return list(CHOSEN[kind.__name__])
    return [
        name
        for name in dir(kind)
        if not name.startswith("_") and isinstance(getattr(kind, name), property)
    ]


def number(value: float) -> float | str:
    """JSON has no NaN; a finite number is written with all its digits."""
    return value if math.isfinite(value) else str(value)


def fields(value: Any) -> Any:
    """The value as lists, dicts, texts and numbers."""
    if value is None or isinstance(value, bool | int | str):
        return value
    if isinstance(value, float):
        return number(value)
    if isinstance(value, np.ndarray):
        return fields(value.tolist())
    if isinstance(value, dict):
        return {str(key): fields(item) for key, item in value.items()}
    if isinstance(value, list | tuple):
        return [fields(item) for item in value]
    if isinstance(value, gs.GibbsteelError):
        return {"text": str(value), "problems": fields(value.problems)}
    if isinstance(value, gs.GibbsteelWarning):
        return {"text": str(value), "code": value.code}
    if type(value).__module__ in MODULES:
        told = {name: fields(getattr(value, name)) for name in properties_of(value)}
        return {"class": type(value).__name__, **told}
    return repr(type(value))


def lost(kept: Any, now: Any, place: str = "") -> list[str]:
    """Where `now` says something else than `kept`; what is new in it does not count."""
    if isinstance(kept, dict) and isinstance(now, dict):
        found = [f"{place}/{key}: is gone" for key in kept if key not in now]
        for key in kept.keys() & now.keys():
            found += lost(kept[key], now[key], f"{place}/{key}")
        return sorted(found)
    if isinstance(kept, list) and isinstance(now, list) and len(kept) == len(now):
        return [
            line
            for i, (old, new) in enumerate(zip(kept, now, strict=True))
            for line in lost(old, new, f"{place}/{i}")
        ]
    return [] if kept == now else [f"{place}: was {kept!r}, is {now!r}"]

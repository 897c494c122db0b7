"""Numbers of a screen as arrays hold them: masks, complex numbers, texts."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from .texts import shown

_masks: Any = np.ma  # which states no types


def real_numbers(values: Any) -> Any:
    """The same without a mask; a TypeError for complex numbers."""
    if isinstance(values, (list, tuple)) and any(map(_masks.isMaskedArray, values)):
        values = _masks.array(values)
    elif not isinstance(values, np.ndarray):
        values = np.asanyarray(values)
    if values.dtype.kind == "c":
        raise TypeError("complex numbers")
    if _masks.isMaskedArray(values):
        return _masks.filled(values.astype(np.float64), np.nan)
    return values


def where_no_numbers(compositions: Any, elements: Sequence[str]) -> str:
    """Where the compositions are no numbers."""
    if hasattr(compositions, "columns"):
        for symbol in elements:
            for value in compositions[symbol]:
                try:
                    float(value)
                except (TypeError, ValueError, OverflowError):
                    return f"column {symbol!r} holds {shown(value)}, no number"
    kind = type(compositions).__name__
    if isinstance(compositions, np.ndarray):
        kind += f" of {compositions.dtype}"
    return f"are {kind}, no table of numbers"

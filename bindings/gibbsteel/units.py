"""Quantities that carry their unit, such as Pint's: understood, never required."""

from __future__ import annotations

from typing import Any

from ._core import Problem
from .errors import InputError


def is_quantity(value: Any) -> bool:
    """True for anything with ``to(unit)`` and ``magnitude``."""
    return hasattr(value, "to") and hasattr(value, "magnitude")


def magnitude(value: Any, unit: str, place: str, remedy: str) -> float:
    """The number of a quantity in a unit.

    Raises
    ------
    InputError
        It cannot be converted: a length given as a temperature
        (gibbsteel.input.292).
    """
    try:
        return float(value.to(unit).magnitude)
    except Exception as error:  # each units package has its own
        what = f"{value} cannot be converted to {unit}"
        problem = Problem("gibbsteel.input.292", place, what, remedy)
        raise InputError([problem]) from error

"""Quantities that targets, comparisons, tolerance bands and designs are about.

>>> from gibbsteel import quantities
>>> quantities.matrix("C")
<Quantity C in the matrix [wt%]>
"""

from __future__ import annotations

from . import _core
from ._core import Quantity

__all__ = [
    "carbide_mass_percent",
    "carbide_volume_percent",
    "carbon_activity",
    "mass_percent",
    "matrix",
    "volume_percent",
]


def matrix(element: str) -> Quantity:
    """An element in all matrix phases together [wt%]."""
    return _core.quantity_matrix(element)


def volume_percent(kind: str) -> Quantity:
    """A kind of carbide, all its occurrences [vol% of the steel]; 0 when absent."""
    return _core.quantity_volume_percent(kind)


def mass_percent(kind: str) -> Quantity:
    """A kind of carbide, all its occurrences [mass% of the steel]; 0 when absent."""
    return _core.quantity_mass_percent(kind)


def carbide_volume_percent() -> Quantity:
    """All carbides together [vol% of the steel]."""
    return _core.quantity_carbide_volume_percent()


def carbide_mass_percent() -> Quantity:
    """All carbides together [mass% of the steel]."""
    return _core.quantity_carbide_mass_percent()


def carbon_activity() -> Quantity:
    """Carbon activity relative to graphite."""
    return _core.quantity_carbon_activity()

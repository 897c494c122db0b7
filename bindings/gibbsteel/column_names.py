"""Names of the columns of tables: words with the unit at the end."""

from __future__ import annotations

import re

_UNITS = {
    "wt%": "weight_percent",
    "vol%": "volume_percent",
    "mass%": "mass_percent",
    "mol%": "mole_percent",
}


def _words(text: str) -> str:
    return re.sub(r"\W+", "_", text.replace("/", " per ")).strip("_")


def kind_column(kind: str) -> str:
    """Volume percent of a kind of phase.

    Examples
    --------
    >>> kind_column("hexagonal MC")
    'hexagonal_MC_volume_percent'
    """
    return f"{_words(kind)}_volume_percent"


def matrix_column(symbol: str) -> str:
    """Weight percent of an element in the matrix."""
    return f"matrix_{symbol}_weight_percent"


def steel_column(symbol: str) -> str:
    """Weight percent of an element in the analysis as given."""
    return f"steel_{symbol}_weight_percent"


def _parts(label: str) -> tuple[str, str]:
    """Name and unit of a label."""
    found = re.fullmatch(r"(.*?)(?: \[(.*)\])?", label, re.DOTALL)
    return (found[1], found[2] or "") if found else (label, "")


def quantity_unit(label: str) -> str:
    """Unit of a quantity by its label; "1" of a pure number.

    Examples
    --------
    >>> quantity_unit("as-quenched hardness [HRC]"), quantity_unit("carbon activity")
    ('HRC', '1')
    """
    return _parts(label)[1] or "1"


def quantity_column(label: str) -> str:
    """A quantity by its label.

    Examples
    --------
    >>> quantity_column("as-quenched hardness [HRC]")
    'as_quenched_hardness_HRC'
    >>> quantity_column("Cr in the matrix [wt%]"), quantity_column("M6C [mass%]")
    ('matrix_Cr_weight_percent', 'M6C_mass_percent')
    """
    name, unit = _parts(label)
    placed = re.fullmatch(r"(\w+) in (?:the )?(.+)", name)
    if placed:
        name = f"{placed[2]} {placed[1]}"
    return _words(f"{name} {_UNITS.get(unit, unit)}")

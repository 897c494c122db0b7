"""Tables of slopes (pandas, imported on use)."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from ._core import Input, Matrix, Occurrence, Sensitivities, State, StateSlope
from .optional import needed
from .trace import about, trace

if TYPE_CHECKING:
    import pandas as pd

_Row = tuple[str, str, str, float]  # part, quantity, unit, number

_OF_OCCURRENCE = {
    "mole_percent": "mol%",
    "mass_percent": "mass%",
    "volume_percent": "vol%",
    "molar_mass": "g/mol",
    "molar_volume": "cm3/mol",
    "density": "g/cm3",
}
_OF_STATE = {
    "carbide_volume_percent": "vol%",
    "carbide_mass_percent": "mass%",
    "carbon_activity": "",
    "gibbs_energy": "J/mol",
    "density": "g/cm3",
}


def _by_name(
    part: str, prefix: str, unit: str, values: dict[str, float]
) -> Iterator[_Row]:
    for name, value in values.items():
        yield part, f"{prefix}_{name}", unit, value


def _composition(part: str, of: Occurrence | Matrix) -> Iterator[_Row]:
    yield from _by_name(part, "weight_percent", "wt%", of.weight_percent)
    yield from _by_name(part, "atom_fraction", "", of.atom_fraction)


def _rows(of: State | StateSlope) -> Iterator[_Row]:
    for name, unit in _OF_STATE.items():
        yield "state", name, unit, getattr(of, name)
    yield from _by_name("state", "chemical_potential", "J/mol", of.chemical_potential)
    yield from _by_name("state", "driving_force", "J/mol", of.driving_force)
    yield "matrix", "mass_percent", "mass%", of.matrix.mass_percent
    yield "matrix", "volume_percent", "vol%", of.matrix.volume_percent
    yield from _composition("matrix", of.matrix)
    for occurrence in of.occurrences:
        for name, unit in _OF_OCCURRENCE.items():
            yield occurrence.name, name, unit, getattr(occurrence, name)
        yield from _composition(occurrence.name, occurrence)
        for number, fractions in enumerate(occurrence.site_fractions, start=1):
            prefix = f"site_fraction_{number}"
            yield from _by_name(occurrence.name, prefix, "", fractions)


def _column(item: Input) -> str:
    """Name of a column: ``per_K``, ``per_wt%_C``, or the place of a parameter."""
    if item.kind == "temperature":
        return "per_K"
    if item.kind == "element":
        return f"per_wt%_{item.name}"
    return f"per_unit_of_{item.name}" + (f"_[{item.unit}]" if item.unit else "")


def _unit(item: Input) -> str:
    """Of the numbers of a column, in those of its rows."""
    if item.kind == "temperature":
        return "unit of the row per K"
    return f"unit of the row per {item.unit or '1'}"


def sensitivities_to_frame(sensitivities: Sensitivities) -> pd.DataFrame:
    """Table of all slopes; units are in the names.

    Parameters
    ----------
    sensitivities : Sensitivities

    Returns
    -------
    pandas.DataFrame
        One row per number of the state, indexed by part of the state, quantity and unit
        of the number; the column ``value``, and one column per input: ``per_K``,
        ``per_wt%_C``. ``attrs`` as in `State.to_frame`; ``attrs["one_sided"]`` names
        the columns that hold on one side of a phase change only.
    """
    pandas = needed("pandas", "to_frame()")
    rows = list(_rows(sensitivities.state)) if sensitivities.slopes else []
    index = pandas.MultiIndex.from_tuples(
        [row[:3] for row in rows], names=["part", "quantity", "unit"]
    )
    columns: dict[str, list[Any]] = {"value": [row[3] for row in rows]}
    for slope in sensitivities.slopes:
        columns[_column(slope.input)] = [row[3] for row in _rows(slope)]
    frame: pd.DataFrame = pandas.DataFrame(columns, index=index)
    units = {_column(s.input): _unit(s.input) for s in sensitivities.slopes}
    one_sided = [_column(s.input) for s in sensitivities.slopes if s.one_sided]
    origin = about([sensitivities.state])
    return trace(frame, origin, units=units, one_sided=one_sided)

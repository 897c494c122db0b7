"""CSV and JSON files that can be traced to their data."""

from __future__ import annotations

import csv
import io
import json
import math
import os
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Any

from ._core import Occurrence, SoakWarning, State, Sweep
from .rows import Row, columns_of, rows_of, states_of
from .trace import about


def _one_line(text: str) -> str:
    return " ".join(text.split())


def _listed(weight_percent: dict[str, float]) -> str:
    amounts = [f"{name} {value:.6g}" for name, value in weight_percent.items() if value]
    return " ".join(amounts) or "nothing"


def _steels(states: Iterable[State]) -> list[str]:
    """Name and analysis of each steel, once."""
    told: dict[tuple[str, ...], None] = {}
    for state in states:
        analysis = state.analysis
        of_steel = (
            f"steel: {state.steel}",
            f"analysis as given, wt%: {_listed(analysis.given)}",
            f"not modelled, wt%: {_listed(analysis.not_modelled)}",
        )
        told[of_steel] = None
    return [line for of_steel in told for line in of_steel]


def _header(states: Sequence[State], warnings: Iterable[SoakWarning]) -> list[str]:
    """The lines that stand above a table, the first one says how many there are."""
    lines = [f"{label}: {text}" for label, text in about(states).items()]
    lines += _steels(states)
    lines += [str(warning) for warning in warnings]
    top = f"gibbsteel table; lines of header: {len(lines) + 1}"
    return [_one_line(line) for line in (top, *lines)]


def _cell(value: Any) -> Any:
    """NaN as an empty cell; everything else in full precision."""
    return "" if isinstance(value, float) and math.isnan(value) else value


def to_csv(
    self: State | Sweep, path: str | os.PathLike[str], *, wide: bool = False
) -> None:
    """Write the table of `to_frame` as CSV; needs no other package.

    Parameters
    ----------
    path : path
        Written as UTF-8, replaced when it exists.
    wide : bool
        As in `to_frame`.

    Notes
    -----
    The file begins with lines ``# label: text``: parameter file with edition and hash,
    library version, basis, analysis, warnings, caution. Read it back with
    ``pandas.read_csv(path, comment="#", float_precision="round_trip")``. Numbers have
    full precision; a number that is not known is an empty cell. What comes back is the
    table; pickle the state or the sweep to get the object back. Grids and screens are
    written by pandas: ``grid.to_frame().to_csv(path)``.

    Examples
    --------
    >>> import gibbsteel as gs, pathlib, tempfile
    >>> state = gs.Steel({"C": 0.8}).soak(celsius=700)
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     file = pathlib.Path(folder, "state.csv")
    ...     state.to_csv(file)
    ...     file.read_text().splitlines()[4]
    '# limit: long-hold limit (true equilibrium)'
    """
    write_csv(states_of(self), self.warnings, rows_of(self, wide=wide), path)


def write_csv(
    states: Sequence[State],
    warnings: Iterable[SoakWarning],
    rows: list[Row],
    path: str | os.PathLike[str],
) -> None:
    """Write rows below the lines that trace them to their states."""
    text = io.StringIO()
    for line in _header(states, warnings):
        text.write(f"# {line}\n")
    columns = columns_of(rows)
    writer = csv.writer(text, quoting=csv.QUOTE_NONNUMERIC, lineterminator="\n")
    if columns:
        writer.writerow(columns)
    for row in rows:
        writer.writerow([_cell(row.get(name, "")) for name in columns])
    Path(path).write_text(text.getvalue(), encoding="utf-8")


def _finite(value: Any) -> Any:
    """The same without NaN, which JSON does not know."""
    if isinstance(value, dict):
        return {key: _finite(item) for key, item in value.items()}
    if isinstance(value, list):
        return [_finite(item) for item in value]
    return None if isinstance(value, float) and not math.isfinite(value) else value


def _occurrence(occurrence: Occurrence) -> dict[str, Any]:
    names = (
        "name",
        "kind",
        "phase",
        "role",
        "volume_percent",
        "mass_percent",
        "mole_percent",
        "weight_percent",
        "site_fractions",
        "sites",
    )
    return {name: getattr(occurrence, name) for name in names}


def _analysis(state: State) -> dict[str, Any]:
    analysis = state.analysis
    return {
        "given": analysis.given,
        "modelled": analysis.modelled,
        "not_modelled": analysis.not_modelled,
        "bound": {item.name: item.weight_percent for item in analysis.bound},
    }


def _state(state: State) -> dict[str, Any]:
    matrix = state.matrix
    return {
        "temperature_C": state.celsius,
        "temperature_F": state.fahrenheit,
        "usable": state.usable,
        "solution": state.solve_report.reason,
        "carbide_volume_percent": state.carbide_volume_percent,
        "carbide_mass_percent": state.carbide_mass_percent,
        "matrix": {
            "volume_percent": matrix.volume_percent,
            "mass_percent": matrix.mass_percent,
            "weight_percent": matrix.weight_percent,
        },
        "occurrences": [_occurrence(item) for item in state.occurrences],
        "carbon_activity": state.carbon_activity,
        "density_g_per_cm3": state.density,
        "chemical_potential_J_per_mol": state.chemical_potential,
        "driving_force_J_per_mol_of_atoms": state.driving_force,
        "warnings": [{"code": w.code, "text": w.text} for w in state.warnings],
    }


def to_json(self: State | Sweep, path: str | os.PathLike[str]) -> None:
    """Write everything about a state or a sweep as JSON; needs no other package.

    Parameters
    ----------
    path : path
        Written as UTF-8, replaced when it exists.

    Notes
    -----
    An object with ``about`` (parameter file with edition and hash, library version,
    basis, caution), ``steel``, ``analysis`` and ``states``, a list also for a single
    state. A sweep adds ``cancelled``. A number that is not known is null. Units are in
    the keys, percents are what their key says.

    The file is for other programs: what comes back is dicts, lists and numbers. Of
    these the steel can be made again, as below, and soaked again with the parameter
    file that ``about`` names. The objects themselves come back from a pickle.

    Examples
    --------
    >>> import gibbsteel as gs, json, pathlib, tempfile
    >>> state = gs.Steel({"C": 0.8}).soak(celsius=700)
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     file = pathlib.Path(folder, "state.json")
    ...     state.to_json(file)
    ...     content = json.loads(file.read_text())
    >>> sorted(content)
    ['about', 'analysis', 'states', 'steel']
    >>> content["states"][0]["carbide_volume_percent"] == state.carbide_volume_percent
    True
    >>> gs.Steel(content["analysis"]["given"], name=content["steel"])
    <Steel: 0.8C, balance Fe (wt%)>
    """
    states = states_of(self)
    content: dict[str, Any] = {"about": about(states), "steel": "", "analysis": {}}
    if states:
        content.update(steel=states[0].steel, analysis=_analysis(states[0]))
    if isinstance(self, Sweep):
        content["cancelled"] = self.cancelled
    content["states"] = [_state(state) for state in states]
    text = json.dumps(_finite(content), indent=1, ensure_ascii=False, allow_nan=False)
    Path(path).write_text(text + "\n", encoding="utf-8")

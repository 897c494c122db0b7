"""A part of a screen as one .npz file of numpy."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import numpy as np

from ._core import ScreenTable
from .screen_arrays import COLUMNS

OLD_COLUMNS = 9  # of COLUMNS, in folders of an earlier format
TEXTS = "warning_texts"  # code, first row and text of each warning


def about_columns(table: ScreenTable) -> dict[str, Any]:
    """What all chunks of a screen share; `read_chunk` needs it."""
    return {
        "kinds": table.kinds,
        "elements": table.elements,
        "quantities": table.quantities,
        "steel_elements": table.steel_elements,
        "rows_per_composition": table.rows_per_composition,
        "at_soak_temperature": table.at_soak_temperature,
        "parameters": table.parameters,
    }


def write_chunk(table: ScreenTable, file: Path) -> None:
    """Puts a finished chunk in its place, whole or not at all."""
    columns = {name: getattr(table, name) for name in COLUMNS}
    columns[TEXTS] = np.array(json.dumps(table._first_warnings))
    part = file.with_suffix(".part")
    with part.open("wb") as stream:
        np.savez(stream, **columns)
    part.replace(file)


def read_chunk(
    file: Path, about: dict[str, Any], parameters_hash: str, first: int, last: int
) -> ScreenTable:
    """Rows `first` to `last`; no file is read when there are none."""
    columns = dict.fromkeys(COLUMNS, b"")
    texts = "[]"
    if last > first:
        with np.load(file, allow_pickle=False) as stored:
            columns = {name: stored[name].tobytes() for name in stored.files}
            texts = str(stored[TEXTS]) if TEXTS in stored.files else texts
    later: tuple[Any, ...] = ()
    if "steel_elements" in about:
        later = (
            about["steel_elements"],
            *(columns[name] for name in COLUMNS[OLD_COLUMNS:]),
            [tuple(warning) for warning in json.loads(texts)],
            about["rows_per_composition"],
        )
    return ScreenTable._restored(
        (
            first,
            last - first,
            about["kinds"],
            about["elements"],
            about["quantities"],
            about["at_soak_temperature"],
            about["parameters"],
            parameters_hash,
            last - first,
            *(columns[name] for name in COLUMNS[:OLD_COLUMNS]),
            *later,
        )
    )

"""A part of a screen as one .npz file of numpy."""

from __future__ import annotations

import hashlib
import json
import zipfile
import zlib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import numpy as np

from ._core import ScreenTable
from .screen_arrays import COLUMNS

OLD_COLUMNS = 9  # of COLUMNS, in folders of an earlier format
TEXTS = "warning_texts"  # code, first row and text of each warning
FAMILIES = "families"  # key and first row of each family of steels
FIRST_ROW = "first_row"
SCREEN = "screen"  # hash of what decides the numbers
_Firsts = list[tuple[Any, ...]]
_FILES = (OSError, EOFError, zipfile.BadZipFile, zlib.error)
UNREADABLE = (*_FILES, AttributeError, KeyError, TypeError, ValueError, RuntimeError)


def screen_hash(made_of: Mapping[str, Any]) -> str:
    """Of `ScreenJob.fingerprint`: it ties a chunk to its screen."""
    text = json.dumps(made_of, sort_keys=True)
    return hashlib.sha256(text.encode()).hexdigest()


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


def write_chunk(table: ScreenTable, file: Path, screen: str) -> None:
    """Puts a finished chunk in its place, whole or not at all."""
    columns = {name: getattr(table, name) for name in COLUMNS}
    columns[TEXTS] = np.array(json.dumps(table._first_warnings))
    columns[FAMILIES] = np.array(json.dumps(table._first_of_families))
    columns[FIRST_ROW] = np.array(table.first_row)
    columns[SCREEN] = np.array(screen)
    part = file.with_suffix(".part")
    with part.open("wb") as stream:
        np.savez(stream, **columns)
    part.replace(file)


def _columns(
    file: Path, first: int, screen: str | None, families: bool
) -> tuple[dict[str, Any], _Firsts, _Firsts]:
    """Bytes of every column, the texts of the warnings, and the families."""
    with file.open("rb") as stream, np.load(stream, allow_pickle=False) as stored:
        if screen is not None:
            of = int(stored[FIRST_ROW]), str(stored[SCREEN])
            if of != (first, screen):
                raise ValueError(f"{file.name} holds other rows, from {of[0]} on")
        columns = {name: stored[name].tobytes() for name in stored.files}
        texts = _firsts(stored[TEXTS]) if TEXTS in stored.files else []
        return columns, texts, _firsts(stored[FAMILIES]) if families else []


def _firsts(stored: Any) -> _Firsts:
    return [tuple(one) for one in json.loads(str(stored))]


def read_chunk(
    file: Path,
    about: dict[str, Any],
    parameters_hash: str,
    rows: tuple[int, int],
    screen: str | None,
    *,
    families: bool,
) -> ScreenTable:
    """The first of `rows` up to the last; no file is read when there are none.

    `screen` is the hash that the chunk must hold; None: chunks of an earlier format,
    which name neither their screen nor their rows. `families`: the chunk must hold
    them; False: those of a folder of an earlier format are not known.

    Raises
    ------
    One of `UNREADABLE`
        The file is not there, damaged or that of other rows.
    """
    first, last = rows
    columns: dict[str, Any] = dict.fromkeys(COLUMNS, b"")
    texts: _Firsts = []
    keys: _Firsts = []
    if last > first:
        columns, texts, keys = _columns(file, first, screen, families)
    later: tuple[Any, ...] = ()
    if "steel_elements" in about:
        later = (
            about["steel_elements"],
            *(columns[name] for name in COLUMNS[OLD_COLUMNS:]),
            texts,
            about["rows_per_composition"],
            keys,
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

"""``screen.json``: what the chunks of a screen folder are parts of."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from ._core import SCREEN_BLOCK_ROWS, Problem, ScreenTable
from .errors import InputError
from .screen_chunk import UNREADABLE, about_columns, read_chunk
from .screen_input import ScreenJob

MANIFEST = "screen.json"
FORMAT = "gibbsteel screen 3"
WITHOUT_FAMILIES = "gibbsteel screen 2"  # its rows carry warning 357 by their block
UNNAMED = "gibbsteel screen 1"  # its chunks name neither their screen nor their rows
_SAID = {
    "library_version": "another version of the library",
    "parameters_hash": "other parameters",
    "input_hash": "other compositions or temperatures",
    "elements": "other elements",
    "one_per_composition": "other temperatures per composition",
    "block_rows": "blocks of another size",
    "options_hash": "other options",
    "quantities": "other quantities",
}


def problem(code: str, what: str) -> InputError:
    """The folder cannot be used."""
    remedy = "take a new or an empty folder"
    return InputError([Problem(f"gibbsteel.input.{code}", "folder", what, remedy)])


def write_manifest(
    path: Path,
    job: ScreenJob,
    made_of: dict[str, Any],
    empty: ScreenTable,
    chunk_rows: int,
) -> None:
    """Puts ``screen.json`` in its place, whole or not at all."""
    about = {
        "format": FORMAT,
        "made_of": made_of,
        "rows": job.rows,
        "chunk_rows": chunk_rows,
        "columns": about_columns(empty),
        "status_names": empty.status_names,
        "certificate_names": empty.certificate_names,
        "caution": "Long-hold limit (true equilibrium); shop soaks are minutes.",
    }
    part = path / (MANIFEST + ".part")
    part.write_text(json.dumps(about, indent=1) + "\n", encoding="utf-8")
    part.replace(path / MANIFEST)


def read_manifest(path: Path) -> dict[str, Any]:
    """What ``screen.json`` says, every value of the kind it must be."""
    try:
        about = json.loads((path / MANIFEST).read_text(encoding="utf-8"))
    except (FileNotFoundError, NotADirectoryError):
        raise problem("325", f"holds no {MANIFEST}") from None
    except IsADirectoryError:
        raise problem("325", f"holds a folder named {MANIFEST}") from None
    except (ValueError, RecursionError):
        raise problem("325", f"holds a damaged {MANIFEST}") from None
    needed = {"format", "made_of", "rows", "chunk_rows", "columns"}
    if not isinstance(about, dict) or not needed <= about.keys():
        raise problem("325", f"holds another kind of {MANIFEST}")
    if about["format"] not in (FORMAT, WITHOUT_FAMILIES, UNNAMED):
        raise problem("325", f"holds another kind of {MANIFEST}")
    if not _is_sound(about):
        raise problem("325", f"holds a damaged {MANIFEST}")
    return about


def _is_sound(about: dict[str, Any]) -> bool:
    counts = about["rows"], about["chunk_rows"]
    if any(not isinstance(n, int) or isinstance(n, bool) for n in counts):
        return False
    if about["rows"] < 0 or about["chunk_rows"] < 1:
        return False
    try:
        of = about["made_of"]["parameters_hash"]
        read_chunk(Path(), about["columns"], of, (0, 0), None, families=False)
    except UNREADABLE:
        return False
    return about["format"] == UNNAMED or "steel_elements" in about["columns"]


def check_manifest(
    about: dict[str, Any], job: ScreenJob, made_of: dict[str, Any], empty: ScreenTable
) -> None:
    """Refuses what is another screen than `job`."""
    kept = about["made_of"]
    other = [said for key, said in _SAID.items() if kept.get(key) != made_of[key]]
    if about["format"] != FORMAT:
        other.append("an earlier format")
    if other:
        raise problem("324", "holds a screen of " + ", ".join(other))
    if (
        about["rows"] != job.rows
        or about["chunk_rows"] % SCREEN_BLOCK_ROWS
        or about["columns"] != about_columns(empty)
    ):
        raise problem("325", f"holds a damaged {MANIFEST}")

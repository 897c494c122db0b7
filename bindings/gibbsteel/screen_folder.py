"""A screen that writes finished chunks to a folder and goes on from what is there."""

from __future__ import annotations

import json
import os
import zipfile
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from ._core import Problem, ScreenTable
from .errors import InputError
from .progress import Callback, reporting
from .screen import chunk_size, join_screens
from .screen_chunk import about_columns, read_chunk, write_chunk
from .screen_input import ScreenJob, screen_job

MANIFEST = "screen.json"
FORMAT = "gibbsteel screen 1"
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


class ScreenFolder:
    """The results of a screen on disk: ``screen.json`` and one file per chunk.

    A chunk is a plain ``.npz`` file of numpy with the columns of `ScreenTable`.

    Parameters
    ----------
    path : path
        A folder that `screen_to_folder` wrote to.

    Raises
    ------
    InputError
        It is no such folder (gibbsteel.input.325).
    """

    def __init__(self, path: str | os.PathLike[str]) -> None:
        self.path = Path(path)
        self.about = _read_manifest(self.path)

    @property
    def rows(self) -> int:
        """Of the whole screen."""
        return int(self.about["rows"])

    @property
    def rows_done(self) -> int:
        """Rows from the first one on that are there without a gap."""
        return sum(last - first for first, last in self._there())

    @property
    def complete(self) -> bool:
        """True: all rows are there."""
        return self.rows_done == self.rows

    def chunks(self) -> Iterator[ScreenTable]:
        """The tables that are there, in order, one in memory at a time.

        Returns
        -------
        iterator of ScreenTable

        Examples
        --------
        >>> import tempfile
        >>> import gibbsteel as gs
        >>> with tempfile.TemporaryDirectory() as path:
        ...     folder = gs.screen_to_folder(path, [[0.8], [1.0]], ["C"], celsius=700)
        ...     [len(chunk) for chunk in folder.chunks()]
        [2]
        """
        for first, last in self._there():
            yield self._read(first, last)

    def table(self) -> ScreenTable:
        """All that is there in one table.

        Returns
        -------
        ScreenTable
            Without a gap; complete when ``complete`` is True.

        Examples
        --------
        >>> import tempfile
        >>> import gibbsteel as gs
        >>> with tempfile.TemporaryDirectory() as path:
        ...     gs.screen_to_folder(path, [[0.8], [1.0]], ["C"], celsius=700).table()
        <ScreenTable: 2 rows, long-hold limit, 2 usable, warnings: 305 in 2>
        """
        tables = list(self.chunks())
        return join_screens(tables) if tables else self._read(0, 0)

    def _spans(self) -> Iterator[tuple[int, int]]:
        """First and last row of every chunk, done or not."""
        for first in range(0, self.rows, int(self.about["chunk_rows"])):
            yield first, min(first + int(self.about["chunk_rows"]), self.rows)

    def _file(self, first: int) -> Path:
        """Where the chunk that begins with row `first` is, or will be."""
        return self.path / f"rows_{first:012d}.npz"

    def _write(self, table: ScreenTable) -> None:
        """Puts a finished chunk in its place, whole or not at all."""
        write_chunk(table, self._file(table.first_row))

    def _has(self, first: int) -> bool:
        """True when the chunk is there and its file is whole."""
        try:
            with zipfile.ZipFile(self._file(first)) as archive:
                return archive.testzip() is None
        except (FileNotFoundError, zipfile.BadZipFile):
            return False

    def _there(self) -> Iterator[tuple[int, int]]:
        for first, last in self._spans():
            if not self._file(first).exists():
                return
            yield first, last

    def _read(self, first: int, last: int) -> ScreenTable:
        parameters_hash = self.about["made_of"]["parameters_hash"]
        about = self.about["columns"]
        return read_chunk(self._file(first), about, parameters_hash, first, last)

    def __repr__(self) -> str:
        return f"<ScreenFolder: {self.rows_done} of {self.rows} rows>"


def screen_to_folder(
    folder: str | os.PathLike[str],
    compositions: Any,
    elements: Iterable[str] | None = None,
    *,
    chunk_rows: int = 0,
    progress: bool | Callback = False,
    **settings: Any,
) -> ScreenFolder:
    """A screen that can be stopped, by whatever it is, and goes on when called again.

    Parameters
    ----------
    folder : path
        Made when it does not exist. One that holds a part of the same screen is
        completed: only chunks that are missing or damaged are computed.
    chunk_rows : int
        Rows of a file, as in `screen_chunks`; a folder that was begun keeps its own.
    compositions : array of shape (n, e), or pandas DataFrame
        Weight percent, balance Fe.

    The other parameters are those of `screen`.

    Returns
    -------
    ScreenFolder
        ``complete`` is False when the work was stopped; the finished chunks are kept.

    Raises
    ------
    InputError
        The folder holds another screen: other input, options, parameters or library
        version (gibbsteel.input.324), or other files (gibbsteel.input.325).

    Examples
    --------
    >>> import tempfile
    >>> import gibbsteel as gs
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     gs.screen_to_folder(folder, [[0.8], [1.0]], ["C"], celsius=700)
    <ScreenFolder: 2 of 2 rows>
    """
    job = screen_job(compositions, elements, **settings)
    store = _opened(Path(folder), job, chunk_size(chunk_rows, job.threads))
    missing = [span for span in store._spans() if not store._has(span[0])]
    before = store.rows - sum(last - first for first, last in missing)
    with reporting(progress, store.rows) as callback:
        for first, last in missing:

            def told(done: int, before: int = before) -> object:
                return None if callback is None else callback(before + done)

            table, stopped = job.run(first, last, told)
            if not table.cancelled:
                store._write(table)
            if stopped or table.cancelled:
                break
            before += last - first
    return store


def _problem(code: str, what: str) -> InputError:
    remedy = "take a new or an empty folder"
    return InputError([Problem(f"gibbsteel.input.{code}", "folder", what, remedy)])


def _opened(path: Path, job: ScreenJob, chunk_rows: int) -> ScreenFolder:
    """The folder of this screen: the one that is there, or a new one."""
    empty, _ = job.run(0, 0, None)  # refuses bad input before anything is written
    if path.exists() and not path.is_dir():
        raise _problem("325", "is a file")
    path.mkdir(parents=True, exist_ok=True)
    if all(file.name == MANIFEST + ".part" for file in path.iterdir()):
        _write_manifest(path, job, empty, chunk_rows)
    store = ScreenFolder(path)
    made_of = job.fingerprint()
    other = [
        said
        for key, said in _SAID.items()
        if store.about["made_of"].get(key) != made_of[key]
    ]
    if other:
        raise _problem("324", "holds a screen of " + ", ".join(other))
    return store


def _write_manifest(
    path: Path, job: ScreenJob, empty: ScreenTable, chunk_rows: int
) -> None:
    about = {
        "format": FORMAT,
        "made_of": job.fingerprint(),
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


def _read_manifest(path: Path) -> dict[str, Any]:
    try:
        about = json.loads((path / MANIFEST).read_text(encoding="utf-8"))
    except (FileNotFoundError, NotADirectoryError):
        raise _problem("325", f"holds no {MANIFEST}") from None
    except ValueError:
        raise _problem("325", f"holds a damaged {MANIFEST}") from None
    needed = {"format", "made_of", "rows", "chunk_rows", "columns"}
    if not isinstance(about, dict) or not needed <= about.keys():
        raise _problem("325", f"holds another kind of {MANIFEST}")
    if about["format"] != FORMAT:
        raise _problem("325", f"holds another kind of {MANIFEST}")
    return about

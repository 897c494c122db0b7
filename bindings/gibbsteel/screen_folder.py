"""A screen that writes finished chunks to a folder and goes on from what is there."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from ._core import ScreenTable
from .progress import Callback, reporting
from .screen import chunk_size, join_screens
from .screen_chunk import UNREADABLE, read_chunk, screen_hash, write_chunk
from .screen_input import ScreenJob, screen_job
from .screen_manifest import (
    FORMAT,
    MANIFEST,
    UNNAMED,
    check_manifest,
    problem,
    read_manifest,
    write_manifest,
)


class ScreenFolder:
    """The results of a screen on disk: ``screen.json`` and one file per chunk.

    A chunk is a plain ``.npz`` file of numpy with the columns of `ScreenTable`, its
    ``first_row``, and ``screen``, a hash of ``made_of`` in ``screen.json``. One that is
    damaged, or holds rows of another chunk or screen, counts as not there.
    Folders of formats before are read as they are, and their repr says so: those of
    "gibbsteel screen 2" do not know the families of their steels (some rows carry
    gibbsteel.warning.357 instead), those of "gibbsteel screen 1" do not name their
    rows either. `screen_to_folder` does not go on in one.

    Parameters
    ----------
    path : path
        A folder that `screen_to_folder` wrote to.

    Raises
    ------
    InputError
        It is no such folder, or its ``screen.json`` is damaged (gibbsteel.input.325).
    """

    def __init__(self, path: str | os.PathLike[str]) -> None:
        self.path = Path(path)
        self.about = read_manifest(self.path)
        named = self.about["format"] != UNNAMED
        self._knows_families = self.about["format"] == FORMAT
        self._screen = screen_hash(self.about["made_of"]) if named else None
        self._whole: dict[tuple[int, int], tuple[int, int]] = {}  # span: size and time

    @property
    def rows(self) -> int:
        """Of the whole screen."""
        return int(self.about["rows"])

    @property
    def rows_done(self) -> int:
        """Rows from the first one on that are there without a gap."""
        done = 0
        for first, last in self._spans():
            if not self._has(first, last):
                break
            done = last
        return done

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
        for first, last in self._spans():
            chunk = self._read(first, last)
            if chunk is None:
                return
            yield chunk

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
        return join_screens(tables) if tables else self._rows(0, 0)

    def _spans(self) -> Iterator[tuple[int, int]]:
        """First and last row of every chunk, done or not."""
        for first in range(0, self.rows, int(self.about["chunk_rows"])):
            yield first, min(first + int(self.about["chunk_rows"]), self.rows)

    def _file(self, first: int) -> Path:
        """Where the chunk that begins with row `first` is, or will be."""
        return self.path / f"rows_{first:012d}.npz"

    def _write(self, table: ScreenTable) -> None:
        """Puts a finished chunk in its place, whole or not at all."""
        assert self._screen is not None
        write_chunk(table, self._file(table.first_row), self._screen)

    def _has(self, first: int, last: int) -> bool:
        """True when the chunk is there and whole; read again when its file changed."""
        try:
            now = self._file(first).stat()
        except FileNotFoundError:
            return False
        seen = now.st_size, now.st_mtime_ns
        if self._whole.get((first, last)) == seen:
            return True
        if self._read(first, last) is None:
            return False
        self._whole[first, last] = seen
        return True

    def _read(self, first: int, last: int) -> ScreenTable | None:
        """None when the chunk is not there, damaged, or that of other rows."""
        try:
            return self._rows(first, last)
        except PermissionError:
            raise
        except UNREADABLE:
            return None

    def _rows(self, first: int, last: int) -> ScreenTable:
        of = self.about["made_of"]["parameters_hash"]
        return read_chunk(
            self._file(first),
            self.about["columns"],
            of,
            (first, last),
            self._screen,
            families=self._knows_families,
        )

    def __repr__(self) -> str:
        earlier = "" if self._knows_families else ", families of the steels not known"
        if not self._screen:
            earlier = ", chunks do not name their rows"
        return f"<ScreenFolder: {self.rows_done} of {self.rows} rows{earlier}>"


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
    missing = [span for span in store._spans() if not store._has(*span)]
    for first, _ in missing:
        if store._file(first).is_dir():
            raise problem("325", f"holds a folder named {store._file(first).name}")
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


def _opened(path: Path, job: ScreenJob, chunk_rows: int) -> ScreenFolder:
    """The folder of this screen: the one that is there, or a new one."""
    # Both refuse bad input before anything is written.
    empty, _ = job.run(0, 0, None)
    made_of = job.fingerprint()
    if path.exists() and not path.is_dir():
        raise problem("325", "is a file")
    path.mkdir(parents=True, exist_ok=True)
    if all(file.name == MANIFEST + ".part" for file in path.iterdir()):
        write_manifest(path, job, made_of, empty, chunk_rows)
    store = ScreenFolder(path)
    check_manifest(store.about, job, made_of, empty)
    return store

"""Many compositions at many temperatures: arrays in, arrays out."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from . import _core
from ._core import (
    SCREEN_BLOCK_ROWS,
    ParameterSet,
    Problem,
    Quantity,
    ScreenTable,
    SolveOptions,
)
from .arguments import whole
from .errors import InputError
from .progress import Callback, reporting
from .screen_input import ScreenJob, screen_job

BLOCKS_PER_THREAD = 16  # of a chunk, when its size is not chosen


def screen(
    compositions: Any,
    elements: Iterable[str] | None = None,
    *,
    celsius: Any = None,
    fahrenheit: Any = None,
    kelvin: Any = None,
    one_per_composition: bool = False,
    quantities: Quantity | Sequence[Quantity] = (),
    parameters: ParameterSet | None = None,
    bind_tramp_elements: bool | None = None,
    graphite: bool = False,
    phases: str | Sequence[str] | None = None,
    suppressed: str | Sequence[str] = (),
    at_soak_temperature: bool = False,
    certify: str | None = None,
    options: SolveOptions | None = None,
    threads: int = 0,
    first_row: int = 0,
    last_row: int | None = None,
    progress: bool | Callback = False,
) -> ScreenTable:
    """Soaks of many compositions at many temperatures; all results in memory.

    Parameters
    ----------
    compositions : array of shape (n, e), pandas DataFrame, or list of Steel
        Weight percent, one row per composition, one column per element; Fe is the
        balance. NaN, a masked number and other bad rows are flagged in the result and
        stop nothing. Steels, such as those of `steels_from_table`, bring their
        parameters and bound tramp elements.
    elements : sequence of str
        Symbol of each column; may be left out for a DataFrame whose columns are the
        symbols, and is left out for steels.
    celsius, fahrenheit, kelvin : float or sequence of float
        Exactly one of them: every composition at every temperature. Row r of the
        result is composition ``r // t`` at temperature ``r % t`` of t temperatures.
    one_per_composition : bool
        True: temperature i belongs to composition i alone.
    quantities : Quantity or sequence of Quantity
        More columns, for instance ``[gs.quantities.hardness_hrc()]``. Called from
        several threads. Where one is a hardening estimate, rows carry its warnings too
        (gibbsteel.warning.330 to .338); that rows are of several families (.357) stands
        in ``table_warnings``, and the families in ``families``.
    parameters : ParameterSet, optional
        `default_parameters` when left out.
    bind_tramp_elements : bool, optional
        As of `Steel`; that of the steels, or False, when left out.
    threads : int
        0: as many as the machine has cores. No number depends on it.
    first_row, last_row : int
        A part of the rows, `last_row` excluded.
    progress : bool or callable
        True shows a bar (tqdm). A callable gets the number of rows done and stops the
        screen by returning False.

    The other parameters are those of `Steel.soak`. Ctrl-C, or Stop in a notebook, ends
    the screen early: ``table.cancelled`` is then True, and
    ``first_row=table.next_row`` goes on.

    Returns
    -------
    ScreenTable
        Every row has the numbers of the single soak of its steel, within rounding
        (1e-9 of a number): rows near the one before are followed from it. Where a
        quantity fails it is NaN, and gibbsteel.warning.361 says why in the first such
        row.

    Raises
    ------
    InputError
        The arguments are no screen: gibbsteel.input.320 to .323; a quantity names an
        element or a kind of phase that the parameter file lacks: .206, .205.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heats = [[0.55, 4.5, 2.75], [0.60, 4.5, 2.75], [float("nan"), 4.5, 2.75]]
    >>> table = gs.screen(heats, ["C", "Cr", "Mo"], celsius=[1000, 1100])
    >>> table
    <ScreenTable: 6 rows, long-hold limit, 4 usable, 2 composition not finite>
    >>> table.carbide_volume_percent.shape, table.volume_percent.shape
    ((6,), (6, 8))
    """
    at = {"celsius": celsius, "fahrenheit": fahrenheit, "kelvin": kelvin}
    given: dict[str, Any] = {"graphite": graphite, "phases": phases}
    given |= {"suppressed": suppressed, "at_soak_temperature": at_soak_temperature}
    given |= {"certify": certify, "options": options, "quantities": quantities}
    given |= {"parameters": parameters, "bind_tramp_elements": bind_tramp_elements}
    given |= {"one_per_composition": one_per_composition, "threads": threads}
    job = screen_job(compositions, elements, **at, **given)
    first, last = job.range_of_rows(first_row, last_row)
    with reporting(progress, max(0, last - first)) as callback:
        return job.run(first, last, callback)[0]


def screen_chunks(
    compositions: Any,
    elements: Iterable[str] | None = None,
    *,
    first_row: int = 0,
    last_row: int | None = None,
    chunk_rows: int = 0,
    progress: bool | Callback = False,
    **settings: Any,
) -> Iterator[ScreenTable]:
    """The rows of a screen chunk by chunk; memory does not grow with their number.

    Parameters
    ----------
    chunk_rows : int
        Rows in a chunk, rounded up to whole blocks of ``gs.SCREEN_BLOCK_ROWS``; 0: 16
        blocks per thread.
    compositions : array of shape (n, e), or pandas DataFrame
        Weight percent, balance Fe. An array of float64 in C order, such as
        ``numpy.memmap``, is read where it is.

    The other parameters are those of `screen`.

    Returns
    -------
    iterator of ScreenTable
        The next rows. When the work is stopped, the last chunk holds what was done, and
        ``first_row=chunk.next_row`` goes on.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heats = [[0.5 + 0.001 * i, 4.5] for i in range(100)]
    >>> chunks = gs.screen_chunks(heats, ["C", "Cr"], celsius=950, chunk_rows=64)
    >>> [len(chunk) for chunk in chunks]
    [64, 36]
    """
    job = screen_job(compositions, elements, **settings)
    first, last = job.range_of_rows(first_row, last_row)
    yield from chunks_of(job, first, last, chunk_rows, progress)


def chunk_size(chunk_rows: int, threads: int) -> int:
    """Rows of a chunk, in whole blocks."""
    if whole(chunk_rows, "chunk_rows") <= 0:
        chunk_rows = BLOCKS_PER_THREAD * SCREEN_BLOCK_ROWS
        chunk_rows *= threads if threads > 0 else os.cpu_count() or 1
    return -(-chunk_rows // SCREEN_BLOCK_ROWS) * SCREEN_BLOCK_ROWS


def chunks_of(
    job: ScreenJob, first: int, last: int, rows: int, progress: bool | Callback
) -> Iterator[ScreenTable]:
    """Rows `first` to `last` in chunks that end where blocks end."""
    size = chunk_size(rows, job.threads)
    begin = first
    with reporting(progress, max(0, last - first)) as callback:
        while True:
            done_before = begin - first

            def told(done: int, before: int = done_before) -> object:
                return None if callback is None else callback(before + done)

            whole = (begin + size) // SCREEN_BLOCK_ROWS * SCREEN_BLOCK_ROWS
            table, stopped = job.run(begin, min(whole, last), told)
            begin = table.next_row
            yield table
            if stopped or table.cancelled or begin >= last:
                return


def join_screens(tables: Sequence[ScreenTable]) -> ScreenTable:
    """One table from those of consecutive rows, or of pieces screened apart.

    Parameters
    ----------
    tables : sequence of ScreenTable
        In order, at least one. Pieces give the bits of the whole screen when they were
        cut at multiples of ``gs.SCREEN_BLOCK_ROWS`` compositions.

    Returns
    -------
    ScreenTable

    Raises
    ------
    InputError
        None given, or of different settings (gibbsteel.input.326).

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heats = [[0.5 + 0.001 * k] for k in range(gs.SCREEN_BLOCK_ROWS + 2)]
    >>> cut = gs.SCREEN_BLOCK_ROWS
    >>> pieces = [gs.screen(p, ["C"], celsius=900) for p in (heats[:cut], heats[cut:])]
    >>> gs.join_screens(pieces) == gs.screen(heats, ["C"], celsius=900)
    True
    """
    tables = list(tables)
    if not tables:
        problem = Problem(
            "gibbsteel.input.326", "tables", "are none", "give at least one table"
        )
        raise InputError([problem])
    return _core.join_screens(tables)

"""A screen whose columns go into arrays of the caller."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np

from ._core import Problem
from .arguments import items_of
from .errors import InputError
from .progress import Callback
from .screen import chunks_of
from .screen_input import ScreenJob, screen_job

COLUMNS = (
    "status",
    "certificate",
    "warnings",
    "carbide_volume_percent",
    "carbon_activity",
    "gibbs_energy",
    "volume_percent",
    "matrix_weight_percent",
    "quantity",
    "kelvin",
    "steel_weight_percent",
    "warning_bits",
)


def screen_into(
    out: Mapping[str, Any],
    compositions: Any,
    elements: Iterable[str] | None = None,
    *,
    first_row: int = 0,
    last_row: int | None = None,
    chunk_rows: int = 0,
    progress: bool | Callback = False,
    **settings: Any,
) -> int:
    """A screen whose columns go into arrays of the caller, such as ``numpy.memmap``.

    Parameters
    ----------
    out : mapping of str to numpy array
        Column of `ScreenTable` -> array for all rows of the screen, for instance
        ``{"status": status, "volume_percent": volumes}``. Rows that are not done keep
        what they hold: in a new array of zeros, ``status`` 0 is "not done".
    compositions : array of shape (n, e), or pandas DataFrame
        Weight percent, balance Fe.

    The other parameters are those of `screen_chunks`.

    Returns
    -------
    int
        The first row that is not done: ``first_row`` of a call that goes on.

    Raises
    ------
    InputError
        No such column, or an array of another shape or type (gibbsteel.input.327).

    Examples
    --------
    >>> import numpy as np
    >>> import gibbsteel as gs
    >>> carbide = np.zeros(2)
    >>> arrays = {"carbide_volume_percent": carbide}
    >>> gs.screen_into(arrays, [[0.8], [1.0]], ["C"], celsius=700)
    2
    >>> carbide.round(1)
    array([12. , 15.1])
    """
    job = screen_job(compositions, elements, **settings)
    first, last = job.range_of_rows(first_row, last_row)
    arrays = items_of(out, "out", 'give arrays by column, such as {"status": array}')
    _check_arrays(arrays, job)
    done = first
    for chunk in chunks_of(job, first, last, chunk_rows, progress):
        for name, array in arrays:
            array[chunk.first_row : chunk.next_row] = getattr(chunk, name)
        done = chunk.next_row
    return done


def _check_arrays(arrays: list[tuple[str, Any]], job: ScreenJob) -> None:
    """Refuses what could not take a whole column without loss."""
    empty, _ = job.run(0, 0, None)
    problems = []
    for name, array in arrays:
        if name not in COLUMNS:
            what = f"there is no column {name!r}"
            remedy = "choose from: " + ", ".join(COLUMNS)
            problems.append(Problem("gibbsteel.input.327", "out", what, remedy))
            continue
        column = getattr(empty, name)
        shape = (job.rows, *column.shape[1:])
        right = getattr(array, "shape", None) == shape
        if right and np.can_cast(column.dtype, array.dtype, "safe"):
            continue
        found = getattr(array, "shape", None), getattr(array, "dtype", type(array))
        what = f"{name!r} has shape {found[0]} and type {found[1]}"
        remedy = f"give an array of shape {shape} and type {column.dtype}"
        problems.append(Problem("gibbsteel.input.327", "out", what, remedy))
    if problems:
        raise InputError(problems)

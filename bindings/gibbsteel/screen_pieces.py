"""A screen cut into pieces for several processes or machines, by what a row costs."""

from __future__ import annotations

import math
import time
from collections.abc import Iterable
from typing import Any

from ._core import SCREEN_BLOCK_ROWS, Problem
from .arguments import whole
from .errors import InputError
from .screen_input import ScreenJob, screen_job


def screen_pieces(
    compositions: Any,
    elements: Iterable[str] | None = None,
    *,
    seconds: float = 10.0,
    pilot: int = 32,
    **settings: Any,
) -> list[slice]:
    """Slices of the compositions that take about so many seconds each on one core.

    Times a pilot: some compositions, evenly spread over all, at all their temperatures
    on one thread. Ten seconds are long against the cost of sending a piece (some
    milliseconds) and short against what is lost when a worker dies.

    Parameters
    ----------
    compositions : array of shape (n, e), or pandas DataFrame
        Weight percent, balance Fe.
    seconds : float
        Wanted for a piece, above 0.
    pilot : int
        Compositions to time, 1 or more; fewer when there are fewer.

    The other parameters are those of `gibbsteel.screen`.

    Returns
    -------
    list of slice
        Whole multiples of ``gs.SCREEN_BLOCK_ROWS`` compositions, at least one, so that
        the pieces together give the bits of the whole screen.

    Raises
    ------
    InputError
        Seconds or pilot out of range (gibbsteel.input.328), and as of `screen`.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heats = [[0.5 + 0.001 * i] for i in range(150)]
    >>> gs.screen_pieces(heats, ["C"], celsius=900, seconds=1e-6, pilot=1)
    [slice(0, 64, None), slice(64, 128, None), slice(128, 150, None)]
    """
    _check(seconds, pilot)
    chosen: dict[str, Any] = {**settings, "threads": 1}
    job = screen_job(compositions, elements, **chosen)
    count = len(job.compositions)
    if count == 0:
        return []
    size = _size(seconds / _cost(job, pilot))
    return [slice(begin, min(begin + size, count)) for begin in range(0, count, size)]


def _check(seconds: float, pilot: int) -> None:
    problems = []
    if not (math.isfinite(seconds) and seconds > 0.0):
        what, remedy = f"is {seconds}", "give a time above 0, for instance 10"
        problems.append(Problem("gibbsteel.input.328", "seconds", what, remedy))
    if whole(pilot, "pilot") < 1:
        what, remedy = f"is {pilot}", "give 1 or more compositions"
        problems.append(Problem("gibbsteel.input.328", "pilot", what, remedy))
    if problems:
        raise InputError(problems)


def _cost(job: ScreenJob, pilot: int) -> float:
    """Seconds per composition on one core."""
    count = len(job.compositions)
    number = min(pilot, count)
    some = job.part([i * count // number for i in range(number)])
    some.run(0, 1, None)  # what is done once only shall not count
    begin = time.perf_counter()
    some.run(0, some.rows, None)
    return max(time.perf_counter() - begin, 1e-9) / number


def _size(compositions: float) -> int:
    """In whole blocks, at least one."""
    return max(1, round(compositions / SCREEN_BLOCK_ROWS)) * SCREEN_BLOCK_ROWS

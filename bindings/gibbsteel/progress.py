"""Progress of long work: silent, a bar, or a callback of the user's."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager

from .optional import needed

Callback = Callable[[int], object]


def counting(
    progress: bool | Callback,
) -> AbstractContextManager[Callback | None]:
    """As `reporting`, for work whose number of soaks is not known in advance."""
    return reporting(progress, None)


@contextmanager
def reporting(
    progress: bool | Callback, total: int | None
) -> Iterator[Callback | None]:
    """A function to call with the number of soaks done, or None.

    ``progress=True`` needs tqdm; a callable is used as it is and stops the work by
    returning False.
    """
    if callable(progress):
        yield progress
    elif not progress:
        yield None
    else:
        tqdm = needed("tqdm.auto", "progress=True").tqdm
        with tqdm(total=total, unit="soak") as bar:

            def advance(done: int) -> None:
                bar.update(done - bar.n)

            yield advance

"""Marks of the pickles that are read in Python, as bindings/pickling.hpp has them.

A pickle names the function that reads it, so ``steel.restore``, ``parameters.restore``
and ``quantities.restore`` keep their names in every version.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from . import _core
from .errors import GibbsteelError


def pickle_mark(class_name: str, format_number: int = 1) -> str:
    """What a pickle of this class carries, such as ``"gibbsteel Steel 1"``."""
    return _core._pickle_mark(class_name, format_number)


@contextmanager
def reading(mark: object, class_name: str, newest: int = 1) -> Iterator[None]:
    """Refuse a pickle with another mark, or whose fields turn out to be wrong."""
    _core._check_pickle_mark(mark, class_name, newest)
    try:
        yield
    except GibbsteelError:
        raise
    except (AttributeError, KeyError, TypeError, ValueError):
        _core._refuse_damaged_pickle(class_name)

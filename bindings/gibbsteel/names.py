"""Lists of names of phases and elements."""

from __future__ import annotations

from collections.abc import Iterable

from .texts import writable


def as_names(names: str | Iterable[str]) -> list[str]:
    """A list; a single text is one name and not a sequence of letters."""
    given = [names] if isinstance(names, str) else list(names)
    return [writable(name) if isinstance(name, str) else name for name in given]

"""Lists of names of phases and elements."""

from __future__ import annotations

from collections.abc import Iterable


def as_names(names: str | Iterable[str]) -> list[str]:
    """A list; a single text is one name and not a sequence of letters."""
    return [names] if isinstance(names, str) else list(names)

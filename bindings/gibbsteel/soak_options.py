"""Keywords of a soak as one compiled value."""

from __future__ import annotations

from collections.abc import Sequence

from . import _core
from ._core import SolveOptions
from .names import as_names


def soak_options(
    graphite: bool,
    phases: str | Sequence[str] | None,
    suppressed: str | Sequence[str],
    at_soak_temperature: bool,
    options: SolveOptions | None,
) -> _core.SoakOptions:
    """See `Steel.soak` for their meaning."""
    return _core.SoakOptions(
        graphite=graphite,
        phases=None if phases is None else as_names(phases),
        suppressed=as_names(suppressed),
        at_soak_temperature=at_soak_temperature,
        solve=options if options is not None else SolveOptions(),
    )

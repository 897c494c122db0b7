"""Keywords of a soak as one compiled value."""

from __future__ import annotations

from collections.abc import Sequence

from . import _core
from ._core import Problem, SolveOptions
from .errors import InputError
from .names import as_names

_CERTIFY_TWICE = (
    "gibbsteel.input.232",
    "certify",
    "is given twice, as an argument and in the options",
    "give it once",
)


def soak_options(
    graphite: bool,
    phases: str | Sequence[str] | None,
    suppressed: str | Sequence[str],
    at_soak_temperature: bool,
    options: SolveOptions | None,
    certify: str | None = None,
    prove_every: int = 1,
    *,
    unit: str = "celsius",
) -> _core.SoakOptions:
    """See `Steel.soak` and `Steel.sweep` for their meaning.

    Texts show temperatures in ``unit`` too: that of the call.
    """
    if options is None:
        options = SolveOptions() if certify is None else SolveOptions(certify=certify)
    elif certify is not None and certify != options.certify:
        raise InputError([Problem(*_CERTIFY_TWICE)])
    return _core.SoakOptions(
        graphite=graphite,
        phases=None if phases is None else as_names(phases),
        suppressed=as_names(suppressed),
        at_soak_temperature=at_soak_temperature,
        solve=options,
        prove_every=prove_every,
        temperature_unit=unit,
    )

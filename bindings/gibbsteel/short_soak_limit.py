"""The limit of short soaks: a method added to the compiled State."""

from __future__ import annotations

from typing import Any

from . import _core
from ._core import ParameterSet, ShortSoak, State
from .temperature import one_kelvin


def short_soak_limit(
    self: State,
    *,
    annealed_celsius: Any = None,
    annealed_fahrenheit: Any = None,
    parameters: ParameterSet | None = None,
) -> ShortSoak:
    """What a soak of minutes dissolves at least of the cementite of an annealed steel.

    Carbon has moved and metals have not, Eq. (B3): cementite has given up what carbon
    it can with the metals that it took up in annealing left in place, and the matrix is
    what that leaves, Eq. (B1) and Eq. (B2). Other carbides (MC, M6C, M7C3, M23C6) give
    up carbon only with their metals and stay as annealed. A real soak lies between this
    limit and the long-hold limit, nearer to the latter the hotter and longer it is.

    Parameters
    ----------
    annealed_celsius, annealed_fahrenheit : float, optional
        Where a slow cool from annealing freezes the exchange of metals; 700 C when left
        out (common practice for low-alloy steel, no source). 650 or 740 C instead take
        0.02 or 0.06 wt% carbon from the matrix of 52100 at 845 C.
    parameters : ParameterSet, optional
        That of the steel; needed when it was not the default one.

    Returns
    -------
    ShortSoak
        ``.state`` is a `State` that goes on into estimates, with the carbon activity of
        the limit; ``.bands`` run from this limit to the long-hold limit.

    Raises
    ------
    InputError
        The annealed steel has no cementite; the matrix of the soak is not austenite, or
        so poor in carbon by the limit that it would hold ferrite (gibbsteel.input.284);
        what `State.with_measured_carbide` refuses of a state.

    Notes
    -----
    Sources: A. Hultgren, Trans. ASM 39 (1947) 915; M. Hillert, K. Nilsson, L.-E.
    Torndahl, J. Iron Steel Inst. 209 (1971) 49; both from memory. Nothing is fitted.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> short = steel.soak(celsius=845).short_soak_limit()
    >>> carbon = short.band("C")
    >>> round(carbon.low, 2), round(carbon.high, 2)
    (0.63, 0.88)
    """
    annealed = {"celsius": annealed_celsius, "fahrenheit": annealed_fahrenheit}
    given = any(value is not None for value in annealed.values())
    kelvin = one_kelvin(**annealed) if given else None
    return _core.short_soak_limit(self, kelvin, parameters)


State.short_soak_limit = short_soak_limit  # type: ignore[assignment]

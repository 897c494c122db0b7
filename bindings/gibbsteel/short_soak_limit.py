"""The limit of short soaks: a method added to the compiled State."""

from __future__ import annotations

from typing import Any

from . import _core
from ._core import ParameterSet, ShortSoak, State
from .arguments import require
from .temperature import one_kelvin


def short_soak_limit(
    self: State,
    *,
    annealed_celsius: Any = None,
    annealed_fahrenheit: Any = None,
    parameters: ParameterSet | None = None,
) -> ShortSoak:
    """What cementite of an annealed steel dissolves when only carbon moves.

    That is about what a soak of minutes does, Eq. (B3): cementite has given up what
    carbon it can with the metals that it took up in annealing left in place, other
    carbide is as annealed, and the matrix is what that leaves, Eq. (B1) and Eq. (B2).
    Nothing here knows the minutes: `State.timed_soak` does. As a rule a real soak lies
    between this limit and the long-hold limit, nearer to the latter the hotter and
    longer it is. Coarse cementite, or one that took up more metal than in equilibrium,
    can leave more carbide.

    Parameters
    ----------
    annealed_celsius, annealed_fahrenheit : float, optional
        Not the furnace setting: where the slow cool from annealing stops changing the
        cementite, because metals no longer pass from it to the ferrite; below A1. When
        left out 700 C (common practice for low-alloy steel, no source), or 10 C below
        A1 where that is lower (own choice), down to 600 C. 600 to 735 C give 52100 at
        845 C 0.59 to 0.65 wt% carbon in the matrix.
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
        gibbsteel.input.284: the annealed steel has no cementite, more than a tenth of
        its carbon in other carbide (which gives up carbon only with its metals), or
        austenite; the matrix of the soak is not austenite, or so poor in carbon by the
        limit that it would hold ferrite; the state is partly molten. Or what
        `State.with_measured_carbide` refuses of a state.

    Notes
    -----
    Sources: A. Hultgren, Trans. ASM 39 (1947) 915; M. Hillert, K. Nilsson, L.-E.
    Torndahl, J. Iron Steel Inst. 209 (1971) 49; both from memory. That metals do not
    move across the interface either is taken for granted. No number was fitted to short
    soaks; the chromium of annealed cementite was fitted to one analysis.

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
    if parameters is not None:
        require(parameters, ParameterSet, "parameters", "give that of the steel")
    return _core.short_soak_limit(self, kelvin, parameters)


State.short_soak_limit = short_soak_limit  # type: ignore[assignment]

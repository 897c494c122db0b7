"""Soaks of so many minutes: methods added to the compiled State."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from . import _core
from ._core import (
    MinutesFor,
    ParameterSet,
    Problem,
    ShortSoak,
    State,
    default_particle_micrometres,
)
from .arguments import real, require
from .errors import InputError
from .temperature import one_kelvin


def timed_soak(
    self: State,
    minutes: float,
    *,
    particle_micrometres: float = default_particle_micrometres,
    annealed_celsius: Any = None,
    annealed_fahrenheit: Any = None,
    parameters: ParameterSet | None = None,
) -> ShortSoak:
    """What cementite of an annealed steel dissolves in so many minutes.

    First carbon alone, at once, as far as `State.short_soak_limit` says. Then metals
    have to diffuse away, and until they have got as far cementite stands still; from
    there on it dissolves, Eqs. (B4) to (B7). For spheroidized stock of steels whose
    annealed carbide is cementite: bearing, oil-hardening, water-hardening steels.
    Pearlite and hardened stock dissolve sooner.

    Parameters
    ----------
    minutes : float
        From when the whole section is at temperature; above 0 to 100 000.
    particle_micrometres : float
        Mean diameter of annealed cementite, 0.05 to 50. Time goes with its square. The
        default is about the mean of commercial bearing stock (from memory).
    annealed_celsius, annealed_fahrenheit : float, optional
        As in `State.short_soak_limit`.
    parameters : ParameterSet, optional
        That of the steel; needed when it was not the default one.

    Returns
    -------
    ShortSoak
        ``.state`` is a `State` that goes on into estimates, with the carbon activity;
        ``.bands`` run from a third of the minutes, annealed up to 50 C colder, to three
        times, annealed up to 30 C hotter, and at least to what the minutes dissolve
        when metals need not catch up with carbon first. Other carbide stays as
        annealed; hours end near the long-hold limit, not exactly at it.

    Raises
    ------
    InputError
        gibbsteel.input.287: minutes or diameter out of range. What
        `State.short_soak_limit` refuses, and so few minutes that the matrix would
        still hold ferrite (gibbsteel.input.284).

    Notes
    -----
    Sources: A. Hultgren, Trans. ASM 39 (1947) 915; M. Hillert, K. Nilsson, L.-E.
    Torndahl, J. Iron Steel Inst. 209 (1971) 49; C. Zener, J. Appl. Phys. 20 (1949) 950;
    diffusion coefficients of several authors; all from memory. No number was fitted;
    which of two diffusion coefficients of chromium was taken was decided with the
    published carbon of 52100 known, 0.62 +-0.06 wt% after 20 to 40 minutes at 845 C.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> soak = steel.soak(celsius=845)
    >>> for minutes in (10, 30, 90):
    ...     carbon = soak.timed_soak(minutes).band("C")
    ...     print(minutes, round(carbon.value, 2), round(carbon.high, 2))
    10 0.63 0.69
    30 0.64 0.79
    90 0.78 0.86
    """
    if isinstance(minutes, Sequence) and not isinstance(minutes, (str, bytes)):
        what, remedy = f"is {type(minutes).__name__}", "timed_soaks takes several times"
        raise InputError([Problem("gibbsteel.input.220", "minutes", what, remedy)])
    return timed_soaks(
        self,
        [minutes],
        particle_micrometres=particle_micrometres,
        annealed_celsius=annealed_celsius,
        annealed_fahrenheit=annealed_fahrenheit,
        parameters=parameters,
    )[0]


def timed_soaks(
    self: State,
    minutes: Iterable[float],
    *,
    particle_micrometres: float = default_particle_micrometres,
    annealed_celsius: Any = None,
    annealed_fahrenheit: Any = None,
    parameters: ParameterSet | None = None,
) -> list[ShortSoak]:
    """`State.timed_soak` at several times, for less than one by one.

    Parameters
    ----------
    minutes : sequence of float
        From when the whole section is at temperature; each above 0 to 100 000.
    particle_micrometres : float
    annealed_celsius, annealed_fahrenheit : float, optional
    parameters : ParameterSet, optional
        As in `State.timed_soak`.

    Returns
    -------
    list of ShortSoak
        In the order of the minutes.

    Raises
    ------
    InputError
        As `State.timed_soak`.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> soaks = steel.soak(celsius=845).timed_soaks([20, 40])
    >>> [round(soak.state.volume_percent_of("M3C"), 1) for soak in soaks]
    [6.1, 5.3]
    """
    times = many_minutes(minutes)
    given = _given(
        particle_micrometres, annealed_celsius, annealed_fahrenheit, parameters
    )
    return _core.timed_soaks(self, times, *given)


def minutes_for(
    self: State,
    element: str,
    weight_percent: float,
    *,
    particle_micrometres: float = default_particle_micrometres,
    annealed_celsius: Any = None,
    annealed_fahrenheit: Any = None,
    parameters: ParameterSet | None = None,
) -> MinutesFor:
    """How long to soak until the matrix holds so much of an element.

    Parameters
    ----------
    element : str
        For instance ``"C"``.
    weight_percent : float
        Of it in the matrix.
    particle_micrometres : float
    annealed_celsius, annealed_fahrenheit : float, optional
    parameters : ParameterSet, optional
        As in `State.timed_soak`.

    Returns
    -------
    MinutesFor
        ``.status`` is ``"found"``, ``"at once"`` (carbon alone gets there), ``"never
        reached"`` or ``"too long"`` (100 000 minutes and more); ``.minutes`` at
        temperature, as sure as a factor of three.

    Raises
    ------
    InputError
        As `State.timed_soak`; no such element in the matrix; a content that no matrix
        can have (gibbsteel.input.340).

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> found = steel.soak(celsius=870).minutes_for("C", 0.75)
    >>> found.status, round(found.minutes)
    ('found', 23)
    """
    given = _given(
        particle_micrometres, annealed_celsius, annealed_fahrenheit, parameters
    )
    require(element, str, "element", "give a symbol")
    return _core.minutes_for(
        self, element, real(weight_percent, "weight_percent"), *given
    )


def many_minutes(minutes: Any) -> list[float]:
    """Numbers from what should be a series of them."""
    try:
        if isinstance(minutes, (str, bytes)):
            raise TypeError
        series = list(minutes)
    except TypeError:
        what, remedy = f"is {type(minutes).__name__}", "give a list of minutes"
        problem = Problem("gibbsteel.input.220", "minutes", what, remedy)
        raise InputError([problem]) from None
    return [real(each, "minutes") for each in series]


def times_to_plot(minutes: Any, particle_micrometres: float) -> list[float]:
    """From a series or one number, rising, each once; refused as by `timed_soak`."""
    several = isinstance(minutes, (str, bytes, Iterable))
    times = many_minutes(minutes) if several else [real(minutes, "minutes")]
    micrometres = real(particle_micrometres, "particle_micrometres")
    for each in times:
        _core.quantity_timed_soak_matrix("C", each, micrometres, None, None)
    return sorted(set(times))


def _given(
    particle_micrometres: float,
    annealed_celsius: Any,
    annealed_fahrenheit: Any,
    parameters: ParameterSet | None,
) -> tuple[float, float | None, ParameterSet | None]:
    """What the compiled functions take: micrometres, kelvin, parameters."""
    annealed = {"celsius": annealed_celsius, "fahrenheit": annealed_fahrenheit}
    given = any(value is not None for value in annealed.values())
    kelvin = one_kelvin(**annealed) if given else None
    if parameters is not None:
        require(parameters, ParameterSet, "parameters", "give that of the steel")
    return real(particle_micrometres, "particle_micrometres"), kelvin, parameters


State.timed_soak = timed_soak  # type: ignore[assignment]
State.timed_soaks = timed_soaks  # type: ignore[assignment]
State.minutes_for = minutes_for  # type: ignore[assignment]

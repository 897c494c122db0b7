"""Soaks of so many minutes: methods added to the compiled State."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from . import _core
from ._core import ParameterSet, Problem, ShortSoak, State
from .arguments import real, require
from .errors import InputError
from .temperature import one_kelvin


def timed_soak(
    self: State,
    minutes: float,
    *,
    particle_micrometres: float = 1.0,
    annealed_celsius: Any = None,
    annealed_fahrenheit: Any = None,
    parameters: ParameterSet | None = None,
) -> ShortSoak:
    """What cementite of an annealed steel dissolves in so many minutes.

    First carbon alone, at once, as far as `State.short_soak_limit` says; from there on
    metals have to diffuse away from the cementite, Eqs. (B4) to (B7). For steels whose
    annealed carbide is cementite: bearing, oil-hardening, water-hardening steels.

    Parameters
    ----------
    minutes : float
        From when the whole section is at temperature; above 0 to 100 000.
    particle_micrometres : float
        Diameter of annealed cementite, 0.05 to 50. Time goes with its square. The
        default stands for size and diffusion together: chosen so that 52100 has the
        published carbon, 0.62 wt%, after about half an hour at 845 C.
    annealed_celsius, annealed_fahrenheit : float, optional
        As in `State.short_soak_limit`.
    parameters : ParameterSet, optional
        That of the steel; needed when it was not the default one.

    Returns
    -------
    ShortSoak
        ``.state`` is a `State` that goes on into estimates, with the carbon activity;
        ``.bands`` run from half to twice the minutes.

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
    diffusion coefficients of several authors; all from memory. They differ by factors
    of two to four for one element, particle sizes by more.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> soak = steel.soak(celsius=845)
    >>> for minutes in (10, 30, 90):
    ...     print(minutes, round(soak.timed_soak(minutes).band("C").value, 2))
    10 0.63
    30 0.66
    90 0.8
    """
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
    particle_micrometres: float = 1.0,
    annealed_celsius: Any = None,
    annealed_fahrenheit: Any = None,
    parameters: ParameterSet | None = None,
) -> list[ShortSoak]:
    """`State.timed_soak` at several times, for little more than one.

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
    [6.1, 5.0]
    """
    annealed = {"celsius": annealed_celsius, "fahrenheit": annealed_fahrenheit}
    given = any(value is not None for value in annealed.values())
    kelvin = one_kelvin(**annealed) if given else None
    if parameters is not None:
        require(parameters, ParameterSet, "parameters", "give that of the steel")
    if isinstance(minutes, (str, bytes)) or not isinstance(minutes, Iterable):
        what, remedy = f"is {type(minutes).__name__}", "give a list of minutes"
        raise InputError([Problem("gibbsteel.input.220", "minutes", what, remedy)])
    times = [real(each, "minutes") for each in minutes]
    diameter = real(particle_micrometres, "particle_micrometres")
    return _core.timed_soaks(self, times, diameter, kelvin, parameters)


State.timed_soak = timed_soak  # type: ignore[assignment]
State.timed_soaks = timed_soaks  # type: ignore[assignment]

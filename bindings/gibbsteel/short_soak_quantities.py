"""Quantities of soaks of minutes, for `gibbsteel.quantities`."""

from __future__ import annotations

from . import _core
from ._core import ParameterSet, Quantity, default_particle_micrometres
from .arguments import real, require
from .temperature import one_kelvin


def short_soak_matrix(
    element: str,
    annealed_celsius: float | str | None = None,
    *,
    annealed_fahrenheit: float | None = None,
    parameters: ParameterSet | None = None,
) -> Quantity:
    """An element in the matrix by `State.short_soak_limit` [wt%]; NaN without one.

    What a search or a match is about where soaks are of minutes. ``parameters`` as
    there; parameter bands and calibrations need none.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> carbon = gs.quantities.short_soak_matrix("C")
    >>> search = steel.temperature_for(carbon, 0.65, celsius=(780, 900))
    >>> round(search.crossings[0].celsius)
    853
    """
    require(element, str, "element", "give a symbol")
    annealed = _annealed(annealed_celsius, annealed_fahrenheit, parameters)
    return _core.quantity_short_soak_matrix(element, *annealed)


def timed_soak_matrix(
    element: str,
    minutes: float | str,
    particle_micrometres: float | str = default_particle_micrometres,
    annealed_celsius: float | str | None = None,
    *,
    annealed_fahrenheit: float | None = None,
    parameters: ParameterSet | None = None,
) -> Quantity:
    """An element in the matrix by `State.timed_soak` [wt%]; NaN without one.

    What a search or a match is about where all soaks take the same minutes.
    ``parameters`` as there; parameter bands and calibrations need none.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> carbon = gs.quantities.timed_soak_matrix("C", minutes=20)
    >>> search = steel.temperature_for(carbon, 0.65, celsius=(800, 900))
    >>> round(search.crossings[0].celsius)
    853
    """
    require(element, str, "element", "give a symbol")
    return _core.quantity_timed_soak_matrix(
        element,
        _real(minutes, "minutes"),
        _real(particle_micrometres, "particle_micrometres"),
        *_annealed(annealed_celsius, annealed_fahrenheit, parameters),
    )


def after_minutes(
    quantity: Quantity,
    minutes: float,
    particle_micrometres: float = default_particle_micrometres,
    annealed_celsius: float | None = None,
    *,
    annealed_fahrenheit: float | None = None,
    parameters: ParameterSet | None = None,
) -> Quantity:
    """Any quantity of the steel after `State.timed_soak`; NaN where there is none.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> hardness = gs.quantities.hardness_hrc(coldest_celsius=20)
    >>> early = gs.quantities.after_minutes(hardness, minutes=30)
    >>> soak = steel.soak(celsius=845)
    >>> round(hardness.value(soak), 1), round(early.value(soak), 1)
    (65.2, 65.6)
    """
    require(quantity, Quantity, "quantity", "give one of gibbsteel.quantities")
    return _core.quantity_after_minutes(
        quantity,
        real(minutes, "minutes"),
        real(particle_micrometres, "particle_micrometres"),
        *_annealed(annealed_celsius, annealed_fahrenheit, parameters),
    )


def _annealed(
    celsius: float | str | None,
    fahrenheit: float | None,
    parameters: ParameterSet | None,
) -> tuple[float | None, ParameterSet | None]:
    """What the compiled functions take: kelvin, parameters."""
    kelvin = None
    if celsius is not None or fahrenheit is not None:
        degrees = None if celsius is None else _real(celsius, "annealed_celsius")
        kelvin = one_kelvin(celsius=degrees, fahrenheit=fahrenheit)
    if parameters is not None:
        require(parameters, ParameterSet, "parameters", "give that of the steel")
    return kelvin, parameters


def _real(value: float | str, place: str) -> float:
    """A number; a text where a pickle makes a quantity again."""
    try:
        return real(float(value) if isinstance(value, str) else value, place)
    except ValueError:
        return real(value, place)

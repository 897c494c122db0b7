"""Hardening estimates: a method added to the compiled State, and the equations."""

from __future__ import annotations

from typing import Any

from . import _core
from ._core import HardeningEstimates, Problem, PropertyEquations, ShortSoak, State
from .errors import InputError
from .temperature import one_kelvin


def property_equations() -> PropertyEquations:
    """The built-in equations of the trade, Eq. (H1) to (H25).

    Returns
    -------
    PropertyEquations
        ``.all`` lists them, ``.keys(kind)`` their keys; ``.with_equation(...)`` gives a
        new set with an equation of your own, to be passed as ``equations=``.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.property_equations().keys("retained austenite")
    ['koistinen-marburger', 'van-bohemen-sietsma', 'van-bohemen-rate']
    >>> own = gs.property_equations().with_equation(
    ...     "martensite start", "shop", lambda x: 500 - 350 * x.weight_percent["C"],
    ...     formula="500 - 350 C", source="own dilatometer", error=20)
    >>> own
    <PropertyEquations: 25 built in, 1 of your own>
    """
    return PropertyEquations()


def _coldest_kelvin(celsius: Any, fahrenheit: Any) -> float | None:
    if celsius is not None and fahrenheit is not None:
        raise InputError(
            [
                Problem(
                    "gibbsteel.input.211",
                    "coldest temperature",
                    "got coldest_celsius= and coldest_fahrenheit=",
                    "give one of them",
                )
            ]
        )
    if celsius is None and fahrenheit is None:
        return None
    return one_kelvin(celsius=celsius, fahrenheit=fahrenheit)


def hardening_options(
    *,
    coldest_celsius: Any = None,
    coldest_fahrenheit: Any = None,
    family: str | None = None,
    martensite_start: str | None = None,
    retained_austenite: str | None = None,
    martensite_hardness: str | None = None,
    grain_pinning: str | None = None,
    particle_diameter: float | None = None,
    cooling_rate: float | None = None,
    equations: PropertyEquations | None = None,
) -> _core.HardeningOptions:
    """The compiled options; what is left out is as in C++."""
    return _core.HardeningOptions(
        coldest_kelvin=_coldest_kelvin(coldest_celsius, coldest_fahrenheit),
        family=family,
        martensite_start=martensite_start,
        retained_austenite=retained_austenite,
        martensite_hardness=martensite_hardness,
        grain_pinning=grain_pinning,
        particle_diameter=particle_diameter,
        cooling_rate=cooling_rate,
        equations=equations,
    )


def hardening(
    self: State | ShortSoak,
    *,
    coldest_celsius: Any = None,
    coldest_fahrenheit: Any = None,
    family: str | None = None,
    martensite_start: str | None = None,
    retained_austenite: str | None = None,
    martensite_hardness: str | None = None,
    grain_pinning: str | None = None,
    particle_diameter: float | None = None,
    cooling_rate: float | None = None,
    equations: PropertyEquations | None = None,
) -> HardeningEstimates:
    """What a quench from this state gives: estimates with bands, Eq. (H12) to (H28).

    As-quenched hardness is that of a fully martensitic quench, no pearlite, no bainite:
    section, quench and hardenability are not considered. Below 20 C almost no
    measurement was compared.

    Parameters
    ----------
    coldest_celsius, coldest_fahrenheit : float, optional
        Coldest temperature that the steel reaches in the quench, below the soak; 20 C
        when left out.
    family : str, optional
        Key of one of ``gs.hardening_families()``; chosen by the composition of the
        steel when left out.
    martensite_start, retained_austenite, martensite_hardness, grain_pinning : str
        Key of another equation of ``gs.property_equations()``; it is used as it stands,
        without the correction for the family.
    particle_diameter : float, optional
        Mean diameter of the carbide [um], > 0; without it there is no grain limit.
    cooling_rate : float, optional
        At 700 C [C/h], > 0; read by the equation ``maynier`` only.
    equations : PropertyEquations, optional
        With equations of your own.

    Returns
    -------
    HardeningEstimates
        Every estimate has ``value``, ``low``, ``high``, ``unit``, ``equation``,
        ``source``; read ``warnings`` too. A state that is not usable or holds no
        austenite gives estimates whose value is NaN.

    Raises
    ------
    InputError
        Unknown equation or family, a coldest temperature not below the soak, a
        diameter or rate not above 0.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
    >>> estimates = steel.soak(celsius=1120).hardening(coldest_celsius=20)
    >>> estimates.family.key
    'high-speed'
    >>> estimates.martensite_start.low < estimates.martensite_start.value
    True
    """
    options = hardening_options(
        coldest_celsius=coldest_celsius,
        coldest_fahrenheit=coldest_fahrenheit,
        family=family,
        martensite_start=martensite_start,
        retained_austenite=retained_austenite,
        martensite_hardness=martensite_hardness,
        grain_pinning=grain_pinning,
        particle_diameter=particle_diameter,
        cooling_rate=cooling_rate,
        equations=equations,
    )
    state = self.state if isinstance(self, ShortSoak) else self
    return _core._hardening(state, options)


State.hardening = hardening  # type: ignore[assignment]
ShortSoak.hardening = hardening  # type: ignore[assignment]

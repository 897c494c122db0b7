"""Quantities that targets, comparisons, tolerance bands and designs are about.

An element is a symbol of the periodic table; anything else is an InputError
(gibbsteel.input.201). An element or a kind of phase that the parameter file lacks is
one (206, 205) where the quantity is used.

>>> from gibbsteel import quantities
>>> quantities.matrix("C")
<Quantity C in the matrix [wt%]>
"""

from __future__ import annotations

from typing import Any

from . import _core
from ._core import ParameterSet, Quantity
from .hardening import hardening_options
from .parameters import parse_once
from .pickles import reading
from .short_soak_quantities import after_minutes, short_soak_matrix, timed_soak_matrix

__all__ = [
    "after_minutes",
    "carbide_mass_percent",
    "carbide_volume_percent",
    "carbon_activity",
    "driving_force",
    "grain_limit",
    "hardening_quantity",
    "hardness_hrc",
    "hardness_hv",
    "in_carbides",
    "in_phase",
    "martensite_start",
    "mass_percent",
    "matrix",
    "quantity_after_minutes",
    "quantity_with_parameters",
    "retained_austenite",
    "retained_austenite_of_matrix",
    "short_soak_matrix",
    "timed_soak_matrix",
    "volume_percent",
]


def matrix(element: str) -> Quantity:
    """An element in all matrix phases together [wt%]."""
    return _core.quantity_matrix(element)


def in_phase(kind: str, element: str) -> Quantity:
    """An element in a kind of phase [wt% of the phase]; NaN when absent."""
    return _core.quantity_in_phase(kind, element)


def in_carbides(element: str) -> Quantity:
    """An element in all carbides together [wt% of them]; NaN without carbide."""
    return _core.quantity_in_carbides(element)


def volume_percent(kind: str) -> Quantity:
    """A kind of carbide, all its occurrences [vol% of the steel]; 0 when absent."""
    return _core.quantity_volume_percent(kind)


def mass_percent(kind: str) -> Quantity:
    """A kind of carbide, all its occurrences [mass% of the steel]; 0 when absent."""
    return _core.quantity_mass_percent(kind)


def driving_force(kind: str) -> Quantity:
    """How far a kind of phase is from forming [J/mol of atoms]; 0 when present."""
    return _core.quantity_driving_force(kind)


def carbide_volume_percent() -> Quantity:
    """All carbides together [vol% of the steel]."""
    return _core.quantity_carbide_volume_percent()


def carbide_mass_percent() -> Quantity:
    """All carbides together [mass% of the steel]."""
    return _core.quantity_carbide_mass_percent()


def carbon_activity() -> Quantity:
    """Carbon activity relative to graphite."""
    return _core.quantity_carbon_activity()


def quantity_after_minutes(
    minutes: str,
    particle_micrometres: str,
    annealed_celsius: str,
    *quantity: str,
    parameters: ParameterSet | None = None,
) -> Quantity:
    """`after_minutes` from texts: what pickle calls."""
    return after_minutes(
        _made(*quantity),
        float(minutes),
        float(particle_micrometres),
        float(annealed_celsius) if annealed_celsius else None,
        parameters=parameters,
    )


def quantity_with_parameters(text: str, function: str, *arguments: str) -> Quantity:
    """One of a soak of minutes, with its parameter set as text: what pickle calls."""
    return _made(function, *arguments, parameters=parse_once(text))


def _made(function: str, *arguments: Any, **parameters: ParameterSet) -> Quantity:
    if function not in __all__:
        raise ValueError(function)
    made: Quantity = globals()[function](*arguments, **parameters)
    return made


def martensite_start(**settings: Any) -> Quantity:
    """Martensite start [C]; the settings are those of ``state.hardening()``."""
    return _core.quantity_martensite_start(hardening_options(**settings))


def retained_austenite(**settings: Any) -> Quantity:
    """Retained austenite [vol% of the steel]; settings as `martensite_start`."""
    return _core.quantity_retained_austenite(hardening_options(**settings))


def retained_austenite_of_matrix(**settings: Any) -> Quantity:
    """Retained austenite [vol% of the matrix]; settings as `martensite_start`."""
    return _core.quantity_retained_austenite_of_matrix(hardening_options(**settings))


def hardness_hv(**settings: Any) -> Quantity:
    """As-quenched hardness [HV]; settings as `martensite_start`."""
    return _core.quantity_hardness_hv(hardening_options(**settings))


def hardness_hrc(**settings: Any) -> Quantity:
    """As-quenched hardness [HRC]; settings as `martensite_start`.

    Examples
    --------
    >>> from gibbsteel import quantities
    >>> quantities.hardness_hrc(coldest_celsius=-75)
    <Quantity as-quenched hardness [HRC]>
    """
    return _core.quantity_hardness_hrc(hardening_options(**settings))


def grain_limit(particle_diameter: float, **settings: Any) -> Quantity:
    """Austenite grain limit [um]: where carbide of a mean diameter [um] stops grains.

    NaN without carbide. Settings as `martensite_start`; ``grain_pinning`` bears on it.

    Examples
    --------
    >>> from gibbsteel import quantities
    >>> quantities.grain_limit(0.5)
    <Quantity austenite grain limit [um]>
    """
    options = hardening_options(particle_diameter=particle_diameter, **settings)
    return _core.quantity_grain_limit(options)


def hardening_quantity(name: str, *settings: str) -> Quantity:
    """One of the six above from texts ``"family=bearing"``: what pickle calls."""
    given = dict(setting.split("=", 1) for setting in settings)

    def number(key: str) -> float | None:
        return float(given[key]) if key in given else None

    options = _core.HardeningOptions(
        coldest_kelvin=number("coldest_kelvin"),
        family=given.get("family"),
        martensite_start=given.get("martensite_start"),
        retained_austenite=given.get("retained_austenite"),
        martensite_hardness=given.get("martensite_hardness"),
        grain_pinning=given.get("grain_pinning"),
        particle_diameter=number("particle_diameter"),
        cooling_rate=number("cooling_rate"),
        equations=None,
    )
    of_matrix = _core.quantity_retained_austenite_of_matrix
    made_by = {
        "grain_limit": _core.quantity_grain_limit,
        "martensite_start": _core.quantity_martensite_start,
        "retained_austenite": _core.quantity_retained_austenite,
        "retained_austenite_of_matrix": of_matrix,
        "hardness_hv": _core.quantity_hardness_hv,
        "hardness_hrc": _core.quantity_hardness_hrc,
    }
    return made_by[name](options)


def restore(mark: object, *fields: Any) -> Quantity:
    """A pickled quantity; a function of the user's own stands behind an empty name."""
    with reading(mark, "Quantity"):
        function, *arguments = fields
        return Quantity(*arguments) if function == "" else _made(*fields)

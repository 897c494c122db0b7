"""Short soaks: a method added to the compiled State."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, Literal

from . import _core
from ._core import MeasuredCarbide, ParameterSet, Problem, ShortSoak, State
from .arguments import listed
from .errors import InputError
from .temperature import one_kelvin


def _error(place: str, what: str) -> Problem:
    remedy = 'give volume percent by kind, for instance {"M3C": 6.0}'
    return Problem("gibbsteel.input.262", place, what, remedy)


def _counts(measured: Any) -> list[MeasuredCarbide]:
    """From a mapping, or a list as it is."""
    if not isinstance(measured, Mapping):
        if isinstance(measured, Sequence) and not isinstance(measured, str):
            remedy = 'make each with gs.MeasuredCarbide("M3C", 6.0)'
            return listed(measured, MeasuredCarbide, "measured", remedy)
        raise InputError([_error("measured", f"is {measured!r}")])
    counts, problems = [], []
    for kind, value in measured.items():
        try:
            counts.append(MeasuredCarbide(kind, value))
        except TypeError:
            problems.append(_error(f"measured, {kind}", f"is {value!r}"))
    if problems:
        raise InputError(problems)
    return counts


def with_measured_carbide(
    self: State,
    measured: Mapping[str, float] | Sequence[MeasuredCarbide],
    *,
    composition: Literal["soak", "annealed"] = "soak",
    unlisted: Literal["kept", "absent"] = "kept",
    annealed_celsius: Any = None,
    annealed_fahrenheit: Any = None,
    parameters: ParameterSet | None = None,
) -> ShortSoak:
    """The short soak that leaves this carbide, at the temperature of the state.

    The matrix is what the carbide leaves of the steel, Eq. (B1) and Eq. (B2).

    Parameters
    ----------
    measured : mapping of str to float, or sequence of MeasuredCarbide
        Volume percent of the steel by kind, as seen in polished sections: 0 to below
        100. `MeasuredCarbide` holds the standard deviation of the count and the
        smallest particle counted as well.
    composition : {"soak", "annealed"}
        Where the composition of a carbide is taken from first; a kind that is absent
        there is taken from the other one, and the band of the matrix holds both.
    unlisted : {"kept", "absent"}
        What becomes of carbides of the long-hold limit that were not measured.
    annealed_celsius, annealed_fahrenheit : float, optional
        Annealing temperature, 740 C when left out.
    parameters : ParameterSet, optional
        That of the steel; needed when it was not the default one.

    Returns
    -------
    ShortSoak
        ``.state`` is a `State` that goes on into estimates, ``.bands`` says how sure
        its matrix is.

    Raises
    ------
    InputError
        With every problem, for instance carbide that would hold more carbon than the
        steel.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> short = steel.soak(celsius=845).with_measured_carbide({"M3C": 6.0})
    >>> round(short.state.matrix.weight_percent["C"], 2)
    0.64
    """
    annealed = {"celsius": annealed_celsius, "fahrenheit": annealed_fahrenheit}
    given = any(value is not None for value in annealed.values())
    return _core.with_measured_carbide(
        self,
        _counts(measured),
        composition,
        one_kelvin(**annealed) if given else None,
        unlisted,
        parameters,
    )


State.with_measured_carbide = with_measured_carbide  # type: ignore[assignment]

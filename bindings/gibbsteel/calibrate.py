"""Numbers of a parameter file fitted to measurements."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from . import _core
from ._core import Calibration, Measurement, ParameterSet, Problem, SolveOptions
from .arguments import count, items_of, require, threads_of
from .composition import as_weight_percent
from .errors import InputError
from .parameters import default_parameters
from .progress import Callback, counting
from .soak_options import soak_options
from .steel import Steel
from .target_quantity import QuantityLike, as_quantity
from .temperature import one_kelvin


def _number(place: str, value: Any) -> float:
    try:
        if isinstance(value, (str, bytes)):
            raise TypeError
        return float(value)
    except (TypeError, ValueError):
        remedy = "give a number in the unit of the quantity"
        problem = Problem("gibbsteel.input.301", place, f"is {value!r}", remedy)
        raise InputError([problem]) from None


def measurement(
    steel: Steel | Mapping[str, float],
    quantity: QuantityLike,
    value: float,
    uncertainty: float,
    *,
    celsius: Any = None,
    fahrenheit: Any = None,
    kelvin: Any = None,
    name: str | None = None,
    record: str = "",
    held_back: bool = False,
    graphite: bool = False,
    phases: str | Sequence[str] | None = None,
    suppressed: str | Sequence[str] = (),
    at_soak_temperature: bool = False,
    options: SolveOptions | None = None,
) -> Measurement:
    """One measured number of a soaked steel.

    Parameters
    ----------
    steel : Steel or mapping of str to float
        Composition [wt%].
    quantity : Quantity or callable
        See `gibbsteel.quantities`; or a function that gets a State.
    value : float
        What was measured, in the unit of the quantity.
    uncertainty : float
        One standard deviation of it, above 0.
    celsius, fahrenheit, kelvin : float
        Exactly one of them: the soak.
    name : str, optional
        Of the steel, which cross-validation goes by; that of `steel` when left out.
    record : str
        Where it is published; the layer names it as used up in fitting.
    held_back : bool
        True: only compared with, before and after, as a test.

    The other parameters are those of `Steel.soak`.

    Returns
    -------
    Measurement
        For `calibrate`.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heat = gs.Steel(C=0.85, Cr=4.1, Mo=5.0, W=6.2, V=1.9, name="M2")
    >>> gs.measurement(heat, gs.quantities.matrix("W"), 2.3, 0.3, celsius=1220)
    <Measurement M2, W in the matrix [wt%] at 1220 C: 2.3 +- 0.3>
    """
    own = steel.name if isinstance(steel, Steel) else ""
    percents = (
        dict(steel.analysis.given)
        if isinstance(steel, Steel)
        else as_weight_percent(steel, {})
    )
    return Measurement(
        own if name is None else name,
        percents,
        one_kelvin(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin),
        as_quantity(quantity),
        _number("value", value),
        _number("uncertainty", uncertainty),
        record,
        held_back,
        soak=soak_options(graphite, phases, suppressed, at_soak_temperature, options),
    )


def _numbers(
    numbers: Mapping[str, float] | Iterable[str] | str | None, on: ParameterSet | None
) -> list[tuple[str, float]]:
    """(place, prior standard deviation; 0: what the file states) of each."""
    if numbers is None:
        return _core.stated_numbers(default_parameters() if on is None else on)
    if isinstance(numbers, str):
        return [(numbers, 0.0)]
    if not isinstance(numbers, Mapping):
        return [(str(place), 0.0) for place in numbers]
    pairs: list[tuple[str, float]] = []
    problems: list[Problem] = []
    for place, deviation in numbers.items():
        try:
            pairs.append((str(place), float(deviation)))
        except (TypeError, ValueError):
            what = f"has a prior standard deviation of {deviation!r}"
            remedy = "give a number above 0, in the unit of the number"
            problems.append(
                Problem("gibbsteel.input.300", f"numbers, {place}", what, remedy)
            )
    if problems:
        raise InputError(problems)
    return pairs


def _starts(start: Mapping[str, float], places: list[str]) -> dict[str, float]:
    """Place -> value, of numbers that are free."""
    found: dict[str, float] = {}
    problems: list[Problem] = []
    remedy = "give first values by number, as those of numbers="
    for place, value in items_of(start, "start", remedy):
        here = f"start, {place}"
        if place not in places:
            what, remedy = "is not among the numbers", "start only what is free"
            problems.append(Problem("gibbsteel.input.300", here, what, remedy))
            continue
        try:
            found[place] = float(value)
        except (TypeError, ValueError):
            what, remedy = f"is {value!r}", "give a number, in the unit of the number"
            problems.append(Problem("gibbsteel.input.300", here, what, remedy))
    if problems:
        raise InputError(problems)
    return found


def _given(measurements: Iterable[Measurement]) -> list[Measurement]:
    remedy = "make each with gs.measurement(...)"
    return [require(m, Measurement, "measurements", remedy) for m in measurements]


def _evaluations(most: Any) -> int:
    return count(most, "most_evaluations", 2, 100000, "gibbsteel.input.302")


def calibrate(
    measurements: Iterable[Measurement],
    numbers: Mapping[str, float] | Iterable[str] | str | None = None,
    *,
    on: ParameterSet | None = None,
    start: Mapping[str, float] | None = None,
    loss: str = "huber",
    loss_scale: float = 0.0,
    cross_validate: bool = True,
    check_published: bool = True,
    most_evaluations: int = 200,
    threads: int = 0,
    progress: bool | Callback = False,
    file_name: str = "calibration.json",
    title: str = "Calibrated numbers",
    edition: str = "1",
    licence: str = "CC0-1.0",
) -> Calibration:
    """Fit numbers of a parameter file to measurements, Eq. (K1) to (K6).

    Parameters
    ----------
    measurements : iterable of Measurement
        See `measurement`. Those of `published_measurements` may stand among your own
        and keep the fit from spoiling other steels; the shipped file was fitted to
        part of them before, so its priors hold these already.
    numbers : mapping of str to float, or names, optional
        Which numbers of the file may move. When left out: all whose standard deviation
        the file states, as `Steel.parameter_band` takes them; the result lists them.
        A mapping gives place in the file (``on.parameter_inputs`` lists all), or what
        a printed calibration or parameter band calls the number, and prior standard
        deviation around the value there, in the unit of the number: coefficients of
        the terms of phases, and volumes. One name or a list takes the deviations that
        the file states. A term that the file lacks is first added with coefficient 0
        by a layer of its own. An empty list fits nothing: the measurements are
        compared with the file as it is (status "compared").
    on : ParameterSet, optional
        `default_parameters` when left out.
    start : mapping of str to float, optional
        Where numbers start, when not at their values in the file; the prior stays
        there. A misfit with several minima ends in another one from another start:
        the least ``misfit_after`` counts.
    loss : str
        "squares", Eq. (K1); "huber", Eq. (K2), or "cauchy", Eq. (K3): a measurement
        that is far off counts less.
    loss_scale : float
        Where that begins [uncertainties]; 0: 1.345 and 2.385.
    cross_validate : bool
        Refit without each steel in turn and predict it.
    check_published : bool
        Count the published measurements that are met before and after, two soaks of
        each: ``.published``. A fit to one heat may spoil other steels.
    most_evaluations : int
        Of all soaks, in each fit.
    threads : int
        0: as many as there are cores. The result does not depend on it.
    progress : bool or callable
        True shows a bar (tqdm). A callable gets the number of evaluations and stops
        the work by returning False.
    file_name, title, edition, licence : str
        Of the layer.

    Returns
    -------
    Calibration
        ``.layer`` is the new file and ``.parameters`` the set with it; print it for
        numbers, misses before and after, published measurements met before and after,
        and what the data do not see.

    Raises
    ------
    InputError
        With every problem of numbers, measurements and options.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heat = gs.Steel(C=0.85, Cr=4.1, Mo=5.0, W=6.2, V=1.9, name="M2")
    >>> tungsten = gs.measurement(
    ...     heat, gs.quantities.matrix("W"), 2.3, 0.3, celsius=1220
    ... )
    >>> fit = gs.calibrate([tungsten], {"/phases/M6C/energy/2/terms/1": 2000.0})
    >>> fit.status, abs(fit.rms_after()) < abs(fit.rms_before())
    ('converged', True)

    Only compare:

    >>> gs.calibrate([tungsten], []).measurements[0].before > 2.6
    True
    """
    pairs = _numbers(numbers, on)
    starts = _starts(start or {}, [place for place, _ in pairs])
    with counting(progress) as callback:
        return _core.calibrate(
            _given(measurements),
            pairs,
            on,
            loss=loss,
            loss_scale=loss_scale,
            cross_validate=cross_validate,
            check_published=check_published,
            most_evaluations=_evaluations(most_evaluations),
            threads=threads_of(threads),
            progress=callback,
            file_name=file_name,
            title=title,
            edition=edition,
            licence=licence,
            start=starts,
        )

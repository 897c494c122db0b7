"""How sure a result is: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from . import _core
from ._core import ParameterBand, Problem, Quantity, SolveOptions, ToleranceBand
from .arguments import MOST_SAMPLES, MOST_SEED, count, threads_of
from .composition import as_weight_percent
from .errors import InputError
from .progress import Callback, reporting
from .soak_options import soak_options
from .target_quantity import QuantityLike, as_list, as_quantity
from .temperature import one_with_unit, refuse_without_unit
from .tolerance_ranges import Range, limits_of


def _furnace_error(celsius: float, fahrenheit: float | None) -> float:
    """[C]"""
    if fahrenheit is None:
        return celsius
    if celsius:
        what = "is given as furnace_celsius= and as furnace_fahrenheit="
        code, remedy = "gibbsteel.input.211", "give one of the two"
        raise InputError([Problem(code, "furnace error", what, remedy)])
    return fahrenheit / 1.8


def _tolerances(
    given: Mapping[str, float],
    ranges: Mapping[str, Range] | None,
    standard_deviations: Mapping[str, float] | None,
    furnace: tuple[float, float | None],
    segregation_percent: float,
) -> _core.HeatTolerances:
    return _core.HeatTolerances(
        ranges=limits_of(ranges, given),
        standard_deviations=as_weight_percent(
            standard_deviations, {}, "standard_deviations"
        ),
        furnace_error=_furnace_error(*furnace),
        segregation_percent=segregation_percent,
    )


def _sampling(samples: Any, seed: Any, threads: Any) -> tuple[int, int, int]:
    """Whole numbers that the compiled part can take."""
    return (
        count(samples, "samples", 0, MOST_SAMPLES, "gibbsteel.input.276"),
        count(seed, "seed", 0, MOST_SEED, "gibbsteel.input.276"),
        threads_of(threads),
    )


def _quantities(given: Any) -> list[Quantity]:
    """As they are, or functions of a State; none when left out."""
    return [as_quantity(q) for q in as_list([] if given is None else given)]


class BandMethods:
    """What `Steel` can say about the uncertainty of a soak."""

    _core: _core.CompiledSteel

    def tolerance_band(
        self,
        *without_unit: Any,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        ranges: Mapping[str, Range] | None = None,
        standard_deviations: Mapping[str, float] | None = None,
        furnace_celsius: float = 0.0,
        furnace_fahrenheit: float | None = None,
        segregation_percent: float = 0.0,
        segregated_carbon: str = "equal activity",
        quantities: QuantityLike | Sequence[QuantityLike] | None = None,
        samples: int = 256,
        percentiles: Sequence[float] = (5.0, 50.0, 95.0),
        corners: bool = True,
        seed: int = 1,
        threads: int = 0,
        progress: bool | Callback = False,
        graphite: bool = False,
        phases: str | Sequence[str] | None = None,
        suppressed: str | Sequence[str] = (),
        at_soak_temperature: bool = False,
        options: SolveOptions | None = None,
    ) -> ToleranceBand:
        """What the scatter of heat, furnace and place does to a soak, Eq. (U1) to (U4).

        Parameters
        ----------
        celsius, fahrenheit, kelvin : float
            Exactly one of them: the nominal soak.
        ranges : mapping of str to (float, float) or float, optional
            Limits by element [wt%], such as those of a grade; one number is plus or
            minus around the steel, no more than it holds unless it holds none. All
            values between are equally likely.
            The steel itself must lie within.
        standard_deviations : mapping of str to float, optional
            Scatter by element [wt%], such as that of a mill's certificates: a normal
            distribution around the steel, cut at 0.
        furnace_celsius, furnace_fahrenheit : float
            Furnace error, plus or minus, in C (0 to 200) or in F (0 to 360): one of
            them, whatever the soak is given in.
        segregation_percent : float
            Local segregation, plus or minus [percent of each alloy content], 0 to 90:
            all substitutional elements are richer or poorer together.
        segregated_carbon : str
            "equal activity": carbon follows until its activity is that of the whole
            heat, as it does in a soak. "scaled": with the alloy content. "unchanged".
            The last two are approximations.
        quantities : Quantity or callable, or sequence of them, optional
            What to follow, see `gibbsteel.quantities`. When left out: carbon in the
            matrix, carbide in all and by kind, alloying elements in the matrix.
        samples : int
            Soaks at quasi-random points, 0 to 1000000.
        percentiles : sequence of float
            Ascending, each between 0 and 100.
        corners : bool
            Search the worst corners too.
        seed : int
            The same seed gives the same samples.
        threads : int
            Soaks at the same time; 0: as many as there are cores. The result does not
            depend on it.
        progress : bool or callable
            True shows a bar (tqdm). A callable gets the number of samples done and
            stops the work by returning False; Ctrl-C stops it too. ``cancelled`` is
            then True, and the band holds the part that is done.

        The other parameters are those of `soak`.

        Returns
        -------
        ToleranceBand
            ``["C in the matrix"]`` is the band of one quantity; print it for tables.

        Raises
        ------
        InputError
            With every problem of the tolerances.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
        >>> band = steel.tolerance_band(
        ...     celsius=1120, ranges={"C": (0.50, 0.60)}, furnace_celsius=10, samples=32
        ... )
        >>> carbon = band["C in the matrix"]
        >>> low, median, high = carbon.sampled.percentiles
        >>> low < carbon.nominal < high
        True
        """
        refuse_without_unit(without_unit, "tolerance_band(celsius=1120, ...)")
        at, unit = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        furnace = furnace_celsius, furnace_fahrenheit
        scatter = ranges, standard_deviations, furnace, segregation_percent
        soak = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        drawn, first, crew = _sampling(samples, seed, threads)
        sampling = drawn, first, percentiles, corners, segregated_carbon, crew
        chosen = _core.ToleranceOptions(soak, *sampling)
        given = self._core.analysis.given
        asked = _tolerances(given, *scatter), _quantities(quantities), chosen
        with reporting(progress, samples) as callback:
            return _core.tolerance_band(self._core, at, *asked, callback)

    def parameter_band(
        self,
        *without_unit: Any,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        quantities: QuantityLike | Sequence[QuantityLike] | None = None,
        samples: int = 0,
        percentiles: Sequence[float] = (5.0, 50.0, 95.0),
        seed: int = 1,
        threads: int = 0,
        progress: bool | Callback = False,
        graphite: bool = False,
        phases: str | Sequence[str] | None = None,
        suppressed: str | Sequence[str] = (),
        at_soak_temperature: bool = False,
        options: SolveOptions | None = None,
    ) -> ParameterBand:
        """What the stated uncertainty of the parameter file does to a soak, Eq. (U5).

        Needs a parameter set with standard deviations. The one that ships states those
        of the numbers that were calibrated: of W, Mo, Cr and V in M6C, M23C6, MC and
        the matrix. Numbers without one count as exact, so the true uncertainty is
        larger; warning 356 names the phases of a steel of which all do, such as M7C3
        of D2. ``thermo_data/ACCURACY.md`` shows how far off results are.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : float
            Exactly one of them.
        quantities : Quantity or callable, or sequence of them, optional
            As in `tolerance_band`.
        samples : int
            0: first order only. Else soaks with that many parameter sets, drawn with
            the correlations of the file, up to 1000000.

        The other parameters are those of `tolerance_band` and `soak`.

        Returns
        -------
        ParameterBand
            ``inputs`` are the uncertain numbers: ``name`` is the place in the file,
            ``text`` says in words what it is.

        Raises
        ------
        InputError
            The parameter set states no standard deviation; wrong options.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> m2 = gs.Steel(C=0.85, Cr=4.1, Mo=5.0, W=6.2, V=1.9)
        >>> band = m2.parameter_band(celsius=1200)
        >>> f"{band['C in the matrix'].first_order.standard_deviation:.2f} wt%"
        '0.02 wt%'
        >>> [w.code for w in gs.Steel(C=0.8).parameter_band(celsius=800).warnings]
        ['gibbsteel.warning.356']
        """
        refuse_without_unit(without_unit, "parameter_band(celsius=1120)")
        drawn, first, crew = _sampling(samples, seed, threads)
        at, unit = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        chosen = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        with reporting(progress, samples) as callback:
            return _core.parameter_band(
                self._core,
                at,
                _quantities(quantities),
                chosen,
                drawn,
                first,
                percentiles,
                crew,
                callback,
            )

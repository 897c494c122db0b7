"""How much of one element gives a wanted value: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from . import _core
from ._core import CompositionSearch, Problem, SolveOptions
from .arguments import count
from .errors import InputError
from .progress import Callback, counting
from .soak_options import soak_options
from .target_quantity import QuantityLike, target_of
from .temperature import one_with_unit


def range_of(values: Any, place: str, code: str) -> tuple[float, float]:
    """Two weight percents."""
    try:
        low, high = values
        return float(low), float(high)
    except (TypeError, ValueError):
        remedy = (
            "give the lowest and the highest weight percent, for instance (0.3, 0.9)"
        )
        problem = Problem(code, place, f"is {values!r}", remedy)
        raise InputError([problem]) from None


def _settings(steps: Any, tolerance: Any, most_soaks: Any) -> dict[str, Any]:
    """Those that are not None: the others keep the default of the core."""
    code = "gibbsteel.input.268"
    chosen: dict[str, Any] = {}
    if steps is not None:
        chosen["steps"] = count(steps, "steps", 4, 10000, code)
    if tolerance is not None:
        chosen["tolerance"] = tolerance
    if most_soaks is not None:
        chosen["most_soaks"] = count(most_soaks, "most_soaks", 10, 2**63 - 1, code)
    return chosen


class CompositionSearchMethods:
    """What `Steel` can say about how much of an element is needed."""

    _core: _core.CompiledSteel

    def composition_for(
        self,
        element: str,
        quantity: QuantityLike | None = None,
        value: float | None = None,
        *,
        percent: tuple[float, float],
        matrix_carbon: float | None = None,
        matrix: Mapping[str, float] | None = None,
        carbide_volume_percent: float | None = None,
        carbide_mass_percent: float | None = None,
        volume_percent: Mapping[str, float] | None = None,
        mass_percent: Mapping[str, float] | None = None,
        carbon_activity: float | None = None,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        graphite: bool = False,
        phases: str | Sequence[str] | None = None,
        suppressed: str | Sequence[str] = (),
        at_soak_temperature: bool = False,
        options: SolveOptions | None = None,
        steps: int | None = None,
        tolerance: float | None = None,
        most_soaks: int | None = None,
        progress: bool | Callback = False,
    ) -> CompositionSearch:
        """All weight percents of an element at which a quantity has a value.

        Parameters
        ----------
        element : str
            The others keep their weight percent, Fe is the balance.
        quantity, value : Quantity or callable, and float
            Or one of the keywords ``matrix_carbon`` to ``carbon_activity``, as for
            `temperature_for`.
        percent : tuple of float
            Lowest and highest weight percent of the element.
        celsius, fahrenheit, kelvin : float
            Exactly one of them.
        graphite, phases, suppressed, at_soak_temperature, options
            As for `soak`.
        steps : int, optional
            The search starts from this many equal steps of the range, 4 to 10000.
        tolerance : float, optional
            Of the result [wt%], 1e-8 to 1.
        most_soaks : int, optional
            The search stops there and says so, 10 or more.
        progress : bool or callable
            True counts soaks (tqdm). A callable gets the number of soaks done and stops
            the search by returning False. Ctrl-C stops it too; ``stopped`` says so.

        Returns
        -------
        CompositionSearch
            ``.weight_percents`` is the answer, ``.status`` and ``.text`` say why there
            is none, or that the quantity jumps over the value there. ``slope`` of a
            crossing [unit/wt%] and ``band_of_nearest`` are as of
            `Steel.temperature_for`.

        Raises
        ------
        InputError
            With every problem of element, range and options; a value that no state can
            have; an element or a kind of phase that the parameter file lacks.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75})
        >>> search = steel.composition_for(
        ...     "C", matrix_carbon=0.4, percent=(0.2, 1.0), celsius=1100
        ... )
        >>> search.status
        'found'
        """
        wish: dict[str, Any] = {"matrix_carbon": matrix_carbon, "matrix": matrix}
        wish["carbide_volume_percent"] = carbide_volume_percent
        wish["carbide_mass_percent"] = carbide_mass_percent
        wish |= {"volume_percent": volume_percent, "mass_percent": mass_percent}
        wanted = target_of(quantity, value, carbon_activity=carbon_activity, **wish)
        ends = range_of(percent, "range", "gibbsteel.input.268")
        held = (graphite, phases, suppressed, at_soak_temperature, options)
        at, unit = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        soak = soak_options(*held, unit=unit)
        how = _settings(steps, tolerance, most_soaks)
        asked = (self._core, element, *wanted, *ends, at, soak)
        with counting(progress) as callback:
            return _core.composition_for(*asked, progress=callback, **how)

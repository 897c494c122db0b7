"""How much of one element gives a wanted value: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from . import _core
from ._core import CompositionSearch, Problem
from .errors import InputError
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


def _given(**chosen: Any) -> dict[str, Any]:
    """Those that are not None: the others keep the default of the core."""
    return {key: number for key, number in chosen.items() if number is not None}


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
        suppressed: tuple[str, ...] = (),
        steps: int | None = None,
        tolerance: float | None = None,
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
        graphite, suppressed
            As for `soak`.
        steps : int, optional
            The search starts from this many equal steps of the range, 4 to 10000.
        tolerance : float, optional
            Of the result [wt%], 1e-8 to 1.

        Returns
        -------
        CompositionSearch
            ``.weight_percents`` is the answer, ``.status`` and ``.text`` say why there
            is none.

        Raises
        ------
        InputError
            With every problem of element, range and options.

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
        wanted = target_of(
            quantity,
            value,
            matrix_carbon=matrix_carbon,
            matrix=matrix,
            carbide_volume_percent=carbide_volume_percent,
            carbide_mass_percent=carbide_mass_percent,
            volume_percent=volume_percent,
            mass_percent=mass_percent,
            carbon_activity=carbon_activity,
        )
        ends = range_of(percent, "range", "gibbsteel.input.268")
        at, unit = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        soak = soak_options(graphite, None, suppressed, False, None, unit=unit)
        given = _given(steps=steps, tolerance=tolerance)
        return _core.composition_for(
            self._core, element, *wanted, *ends, at, soak, **given
        )

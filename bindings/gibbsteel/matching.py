"""Where another steel has the same matrix carbon, or the same of anything."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from . import _core, quantities
from ._core import MatchingTemperature, SearchOptions, ShortSoak, SolveOptions, State
from .arguments import require
from .progress import Callback, counting
from .soak_options import soak_options
from .steel import Steel
from .target_quantity import QuantityLike, as_quantity
from .temperature_range import range_and_unit


def matching_temperature(
    *,
    reference: State | ShortSoak,
    steel: Steel,
    quantity: QuantityLike | None = None,
    celsius: Sequence[Any] | None = None,
    fahrenheit: Sequence[Any] | None = None,
    kelvin: Sequence[Any] | None = None,
    search: SearchOptions | None = None,
    progress: bool | Callback = False,
    graphite: bool = False,
    phases: str | Sequence[str] | None = None,
    suppressed: str | Sequence[str] = (),
    at_soak_temperature: bool = False,
    options: SolveOptions | None = None,
) -> MatchingTemperature:
    """The temperatures at which another steel has the value of a reference soak.

    Parameters
    ----------
    reference : State or ShortSoak
        The soak to be matched.
    steel : Steel
        The other steel.
    quantity : Quantity or callable, optional
        What is to be equal; carbon in the matrix when left out.

    The other parameters are those of `Steel.phase_changes`; the options of the soak
    are used for ``steel``.

    Returns
    -------
    MatchingTemperature
        ``temperatures_celsius``, and ``search`` with its crossings; look at
        ``search.status`` when there is none. ``uncertainty_at_least`` of a crossing
        counts that the same numbers of the file move the reference; it is NaN when that
        was made with another file or is a short soak.

    Raises
    ------
    InputError
        The reference is not usable or has no such value; as `Steel.phase_changes`.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> lean = gs.Steel(C=0.9, name="lean").soak(celsius=780)
    >>> rich = gs.Steel(C=1.2, name="rich")
    >>> match = gs.matching_temperature(reference=lean, steel=rich)
    >>> [round(celsius) for celsius in match.temperatures_celsius]
    [780]
    """
    state = reference.state if isinstance(reference, ShortSoak) else reference
    require(state, State, "reference", "give a soak of it: steel.soak(celsius=1120)")
    require(steel, Steel, "steel", "give the steel that is to match the reference")
    at, unit = range_and_unit(
        steel.parameters, celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin
    )
    chosen = soak_options(
        graphite, phases, suppressed, at_soak_temperature, options, unit=unit
    )
    wanted = quantities.matrix("C") if quantity is None else as_quantity(quantity)
    chosen_search = search or SearchOptions()
    with counting(progress) as callback:
        return _core.matching_temperature(
            state, steel._core, wanted, at, chosen, chosen_search, callback
        )

"""Temperatures for targets: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, TypeVar

from . import _core
from ._core import (
    Dissolution,
    PhaseChanges,
    SearchOptions,
    SolveOptions,
    TemperatureSearch,
)
from .arguments import require
from .progress import Callback, counting
from .soak_options import soak_options
from .target_quantity import QuantityLike, as_quantity, target_of
from .temperature_range import range_and_unit

_Result = TypeVar("_Result")


class TargetMethods:
    """What `Steel` can say about where something happens."""

    _core: _core.CompiledSteel

    def phase_changes(
        self,
        *,
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
    ) -> PhaseChanges:
        """Where phases appear and disappear on heating; Ae1, Ae3 and Acm.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : pair of float
            Low and high end of the range, in one of the units; 700 to 1250 C, as far
            as the parameter file goes, when left out. Texts show what is found in that
            unit beside C; ``searched_celsius`` tells the range.
        search : SearchOptions, optional
            How closely to search, and how far to locate.
        progress : bool or callable
            True counts soaks (tqdm). A callable gets the number of soaks done and stops
            the search by returning False. Ctrl-C stops it too; ``stopped`` says so.

        The other parameters are those of `soak`.

        Returns
        -------
        PhaseChanges
            ``changes``, ``fields``, ``ae1``, ``gaps`` (where nothing is known), ...
            ``uncertainty_at_least`` of a change [K] is one standard deviation of its
            temperature by those that the parameter file states, Eq. (B8); NaN where
            it states nothing of it, or several phases change at once.

        Raises
        ------
        InputError
            Range, options, unknown phase.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel(C=0.4, name="plain")
        >>> for change in steel.phase_changes(celsius=(700, 850)).changes:
        ...     print(change.text)
        727 C on heating: ferrite + M3C -> austenite (invariant)
        787 C on heating: ferrite disappears
        """
        at, unit = self._range(celsius, fahrenheit, kelvin)
        soak = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        asked = (at, soak)
        return self._searched(_core.phase_changes, asked, search, progress)

    def dissolution_temperature(
        self,
        kind: str,
        *,
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
    ) -> Dissolution:
        """The temperature above which a kind of phase is gone.

        Parameters
        ----------
        kind : str
            ``"M23C6"``, ``"ferrite"``, ...

        The other parameters are those of `phase_changes`.

        Returns
        -------
        Dissolution
            Look at ``status``: the kind may be there up to the end of the range, or
            nowhere in it. ``intervals`` tells where it is, ``warnings`` and
            ``uncertainty_at_least`` (as that of `phase_changes`) how far to trust it.

        Raises
        ------
        InputError
            As `phase_changes`, and for an unknown kind or a list of kinds.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> gs.Steel(C=1.0).dissolution_temperature("M3C").status
        'found'
        """
        require(kind, str, "kind", "give one kind, and call it once for each")
        at, unit = self._range(celsius, fahrenheit, kelvin)
        soak = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        asked = (kind, at, soak)
        return self._searched(_core.dissolution_temperature, asked, search, progress)

    def temperature_for(
        self,
        quantity: QuantityLike | None = None,
        value: float | None = None,
        *,
        matrix_carbon: float | None = None,
        matrix: Mapping[str, float] | None = None,
        carbide_volume_percent: float | None = None,
        carbide_mass_percent: float | None = None,
        volume_percent: Mapping[str, float] | None = None,
        mass_percent: Mapping[str, float] | None = None,
        carbon_activity: float | None = None,
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
    ) -> TemperatureSearch:
        """All temperatures at which a number of the state has a value.

        Parameters
        ----------
        quantity, value : Quantity or callable, and float
            Any number of a state: ``quantities.matrix("Cr")``, or a function that gets
            a State.
        matrix_carbon : float
            Carbon in the matrix [wt%].
        matrix : dict of one str to float
            An element in the matrix [wt%]: ``{"Cr": 4.4}``.
        carbide_volume_percent, carbide_mass_percent : float
            All carbides together.
        volume_percent, mass_percent : dict of one str to float
            A kind of phase: ``{"M6C": 2}``.
        carbon_activity : float
            Relative to graphite.

        Exactly one of these. The other parameters are those of `phase_changes`.

        Returns
        -------
        TemperatureSearch
            ``temperatures_celsius``, upwards; ``crossings`` with their soaks; look at
            ``status`` and ``text`` when there is none. A crossing of kind ``"jump"``
            does not have the value: see ``below`` and ``above``.
            ``uncertainty_at_least`` of a crossing [K] is one standard deviation of its
            temperature by those that the parameter file states, Eq. (B8); NaN where it
            states nothing of the quantity. Its ``slope`` [unit/K] tells how far an
            error of the quantity moves the answer: 0.5 HRC can be 50 K; ``band`` is
            what may be measured there, of a hardening estimate. Slope and uncertainty
            are NaN for a function of one's own, which may rest on more than the soak,
            for instance on that of another steel. ``gaps`` is where nothing is known,
            ``no_value`` where the quantity has none and why. Where a hardening estimate
            never reaches the value, ``band_of_nearest`` is what may be measured where
            it comes nearest.

        Raises
        ------
        InputError
            As `phase_changes`; no target, or more than one; a value that no state can
            have; an element or a kind of phase that the parameter file lacks.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
        >>> found = steel.temperature_for(matrix_carbon=0.50, celsius=(1000, 1200))
        >>> [round(celsius) for celsius in found.temperatures_celsius]
        [1138]
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
        at, unit = self._range(celsius, fahrenheit, kelvin)
        soak = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        asked = (*wanted, at, soak)
        return self._searched(_core.temperature_for, asked, search, progress)

    def _searched(
        self,
        run: Callable[..., _Result],
        asked: tuple[Any, ...],
        search: SearchOptions | None,
        progress: bool | Callback,
    ) -> _Result:
        with counting(progress) as callback:
            return run(self._core, *asked, search or SearchOptions(), callback)

    def _range(self, celsius: Any, fahrenheit: Any, kelvin: Any) -> Any:
        return range_and_unit(
            self._core.parameters, celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin
        )

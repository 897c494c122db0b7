"""Temperatures for targets: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from . import _core
from ._core import (
    Dissolution,
    HardeningWindow,
    PhaseChanges,
    SearchOptions,
    SolveOptions,
    TemperatureSearch,
)
from .arguments import require
from .progress import Callback, counting
from .soak_options import soak_options
from .target_quantity import QuantityLike, as_quantity, target_of
from .temperature_range import kelvin_range


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
            as the parameter file goes, when left out.
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
        soak = soak_options(graphite, phases, suppressed, at_soak_temperature, options)
        at = self._range(celsius, fahrenheit, kelvin)
        with counting(progress) as callback:
            return _core.phase_changes(
                self._core, at, soak, search or SearchOptions(), callback
            )

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
            nowhere in it. ``intervals`` tells where it is, ``warnings`` how far to
            trust it.

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
        soak = soak_options(graphite, phases, suppressed, at_soak_temperature, options)
        at = self._range(celsius, fahrenheit, kelvin)
        with counting(progress) as callback:
            return _core.dissolution_temperature(
                self._core, kind, at, soak, search or SearchOptions(), callback
            )

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
            ``crossings`` in order of temperature; look at ``status`` and ``text`` when
            there is none. A crossing of kind ``"jump"`` does not have the value: see
            ``below`` and ``above``.

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
        >>> [round(crossing.celsius) for crossing in found.crossings]
        [1144]
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
        soak = soak_options(graphite, phases, suppressed, at_soak_temperature, options)
        at = self._range(celsius, fahrenheit, kelvin)
        with counting(progress) as callback:
            return _core.temperature_for(
                self._core, *wanted, at, soak, search or SearchOptions(), callback
            )

    def hardening_window(
        self,
        *,
        no_ferrite: bool = True,
        hardness: QuantityLike | None = None,
        least_hardness: float = 0.0,
        pinning_kind: str = "",
        least_pinning_volume_percent: float | None = None,
        solidus_margin: float | None = None,
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
    ) -> HardeningWindow:
        """Between which temperatures the steel can be hardened, by chosen rules.

        Parameters
        ----------
        no_ferrite : bool
            The matrix must be without ferrite.
        hardness, least_hardness : Quantity or callable, and float
            Least value of a quantity, such as as-quenched hardness.
        pinning_kind, least_pinning_volume_percent : str and float
            The carbide that keeps grains small (all together when left out), and its
            least volume percent.
        solidus_margin : float
            Distance from the known start of melting of a similar steel, and from the
            computed solidus where the parameter file has a liquid [K].

        The other parameters are those of `phase_changes`.

        Returns
        -------
        HardeningWindow
            ``celsius`` is (floor, ceiling), or None: see ``status`` and ``text``.

        Raises
        ------
        InputError
            As `phase_changes`, and for rules outside their range.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> window = gs.Steel(C=0.8).hardening_window(celsius=(700, 900))
        >>> window.floor_rule, window.ceiling_rule
        ('ferrite', 'range')
        """
        margin = {} if solidus_margin is None else {"solidus_margin": solidus_margin}
        rules = _core.WindowRules(
            no_ferrite=no_ferrite,
            hardness=None if hardness is None else as_quantity(hardness),
            least_hardness=least_hardness,
            pinning_kind=pinning_kind,
            least_pinning_volume_percent=least_pinning_volume_percent,
            **margin,
        )
        soak = soak_options(graphite, phases, suppressed, at_soak_temperature, options)
        at = self._range(celsius, fahrenheit, kelvin)
        with counting(progress) as callback:
            return _core.hardening_window(
                self._core, rules, at, soak, search or SearchOptions(), callback
            )

    def _range(self, celsius: Any, fahrenheit: Any, kelvin: Any) -> tuple[float, float]:
        return kelvin_range(
            self._core.parameters, celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin
        )

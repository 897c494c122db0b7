"""Between which temperatures a steel can be hardened: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from . import _core
from ._core import HardeningWindow, SearchOptions, SolveOptions
from .progress import Callback, counting
from .soak_options import soak_options
from .target_quantity import QuantityLike, as_quantity
from .temperature_range import range_and_unit


class WindowMethods:
    """What `Steel` can say about hardening temperatures."""

    _core: _core.CompiledSteel

    def hardening_window(
        self,
        *,
        no_ferrite: bool = True,
        hardness: QuantityLike | None = None,
        least_hardness: float | None = None,
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
        least_hardness, hardness : float, and Quantity or callable
            Least as-quenched hardness [HRC], or least value of another quantity.
            ``hardness`` alone is refused.
        pinning_kind, least_pinning_volume_percent : str and float
            The carbide that keeps grains small (all together when left out), and its
            least volume percent, for instance 1. ``pinning_kind`` alone is refused.
        solidus_margin : float
            Distance from where a similar steel was seen to melt, and from the computed
            solidus where the parameter file has a liquid [K]. None from the low end of
            what is known to be free of melt.

        The other parameters are those of `phase_changes`.

        Returns
        -------
        HardeningWindow
            ``celsius`` is (floor, ceiling), with None for an end that no rule sets;
            None when there is no window: see ``status`` and ``text``.
            ``searched_celsius`` is the range, ``remarks`` say what no rule looks at.

        Raises
        ------
        InputError
            As `phase_changes`, and for rules outside their range.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> window = gs.Steel(C=0.8).hardening_window(celsius=(700, 900))
        >>> window.floor_rule, window.ceiling_rule, window.celsius[1]
        ('ferrite', 'range', None)
        >>> window.remarks[1].split(",")[0]
        'Grain growth is not considered'
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
        at, unit = range_and_unit(
            self._core.parameters, celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin
        )
        soak = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        with counting(progress) as callback:
            return _core.hardening_window(
                self._core, rules, at, soak, search or SearchOptions(), callback
            )

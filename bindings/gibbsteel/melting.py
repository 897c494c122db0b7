"""Between which temperatures a steel melts: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from . import _core
from ._core import MeltingRange, SearchOptions, SolveOptions
from .progress import Callback, counting
from .soak_options import soak_options
from .temperature import given_unit
from .temperature_range import kelvin_range


class MeltingMethods:
    """What `Steel` can say about melting."""

    _core: _core.CompiledSteel

    def melting_range(
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
    ) -> MeltingRange:
        """Solidus and liquidus of the mean composition.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : pair of float
            Low and high end of the range, in one of the units; 1000 C to the end of
            the validity of the parameter file when left out.

        The other parameters are those of `phase_changes`.

        Returns
        -------
        MeltingRange
            ``solidus_celsius``, ``liquidus_celsius``, and ``searched_celsius`` for the
            range; look at ``status`` and ``text``
            when one is None. ``at_solidus`` holds the first liquid.

        Raises
        ------
        InputError
            As `phase_changes`.

        Notes
        -----
        Segregated places of a casting, and steels with much P or S, begin to melt
        lower. The file that ships has no liquid: the layer in the example adds it.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.9, "Cr": 4.1, "Mo": 5, "W": 6.2, "V": 1.9})
        >>> steel.melting_range().status
        'no liquid'
        >>> with_liquid = gs.default_parameters("liquid")
        >>> found = steel.with_parameters(with_liquid).melting_range()
        >>> found.solids_at_solidus
        ['austenite', 'MC', 'M6C']
        >>> 1200 < found.solidus_celsius < found.liquidus_celsius < 1500
        True
        """
        soak = soak_options(
            graphite,
            phases,
            suppressed,
            at_soak_temperature,
            options,
            unit=given_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin),
        )
        given = {"celsius": celsius, "fahrenheit": fahrenheit, "kelvin": kelvin}
        parameters = self._core.parameters
        if all(value is None for value in given.values()):
            at = _core.melting_search_range(parameters)
        else:
            at = kelvin_range(parameters, **given)
        with counting(progress) as callback:
            return _core.melting_range(
                self._core, at, soak, search or SearchOptions(), callback
            )

"""Derivatives of a soak: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from . import _core
from ._core import Sensitivities, SolveOptions
from .names import as_names
from .soak_options import soak_options
from .temperature import one_with_unit, refuse_without_unit


class SensitivityMethods:
    """What `Steel` can say about slopes."""

    _core: _core.CompiledSteel

    def sensitivities(
        self,
        *without_unit: Any,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        elements: str | Sequence[str] | None = None,
        parameters: str | Sequence[str] | None = None,
        graphite: bool = False,
        phases: str | Sequence[str] | None = None,
        suppressed: str | Sequence[str] = (),
        at_soak_temperature: bool = False,
        options: SolveOptions | None = None,
    ) -> Sensitivities:
        """Exact derivatives of every number of a soak, Eq. (S1) to (S5).

        Parameters
        ----------
        celsius, fahrenheit, kelvin : float
            Exactly one of them. Slopes are per K.
        elements : str or sequence of str, optional
            Slopes per wt% more of the element and as much Fe less; all elements of the
            calculation when left out, none for ``[]``.
        parameters : str or sequence of str, optional
            Places of numbers of the parameter file, such as
            ``"/phases/M6C/energy/3/terms/T"`` (see ``ParameterSet.parameter_inputs``);
            ``"all"`` for all of them, none when left out.

        The other parameters are those of `soak`.

        Returns
        -------
        Sensitivities
            ``["temperature"]``, ``["C"]``, ... are the slopes, in the form of the
            state. Look at ``one_sided`` and ``remark`` of each.

        Raises
        ------
        InputError
            As `soak`, and for an element or parameter that is no input.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
        >>> slopes = steel.sensitivities(celsius=1120, elements=["C", "V"])
        >>> slopes.inputs
        ['temperature', 'C', 'V']
        >>> slopes["C"].matrix.weight_percent["C"] > 0
        True
        """
        refuse_without_unit(without_unit, "sensitivities(celsius=1120)")
        at, unit = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        chosen = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        every = isinstance(parameters, str) and parameters == "all"
        return _core.sensitivities(
            self._core,
            at,
            chosen,
            None if elements is None else as_names(elements),
            [] if every or parameters is None else as_names(parameters),
            every,
        )

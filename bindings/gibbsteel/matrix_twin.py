"""Matrix twins: methods that Steel inherits."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, Self

import numpy as np

from . import _core
from ._core import CompiledSteel, MakeableSteps, Problem, State, TwinStudy
from .arguments import require
from .errors import InputError
from .temperature import many_kelvin, one_kelvin, one_with_unit, refuse_without_unit


def steps_of(rounding: bool | MakeableSteps) -> MakeableSteps:
    """To what weight percents are rounded.

    Raises
    ------
    InputError
        Neither True, False nor MakeableSteps (gibbsteel.input.220).
    """
    if isinstance(rounding, (bool, np.bool_)):
        return MakeableSteps() if rounding else MakeableSteps.none()
    remedy = 'give True, or for instance MakeableSteps({"C": 0.02}, others=0.1)'
    return require(rounding, MakeableSteps, "rounding", remedy)


def _others(celsius: Any, fahrenheit: Any) -> list[float]:
    """[K]; none when nothing is given."""
    if celsius is None and fahrenheit is None:
        return []
    if celsius is not None and fahrenheit is not None:
        what = "are given as others_celsius= and as others_fahrenheit="
        code = "gibbsteel.input.211"
        raise InputError([Problem(code, "others", what, "give one of the two")])
    return many_kelvin(celsius=celsius, fahrenheit=fahrenheit)


class MatrixTwinMethods:
    """What a steel knows about the alloy made from its matrix."""

    _core: CompiledSteel

    @classmethod
    def _wrapped(cls, core: CompiledSteel) -> Self:
        raise NotImplementedError

    def matrix_twin(
        self,
        *without_unit: Any,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        state: State | None = None,
        rounding: bool | MakeableSteps = True,
        keep_not_modelled: bool = False,
    ) -> Self:
        """The steel with this steel's matrix composition at that soak.

        By its own composition it may be of another hardening family: to compare
        ``hardening()`` of both, name one ``family=`` for both.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : float
            Exactly one of them; or a state of this steel instead.
        state : State, optional
            Takes the matrix of this one, for instance of a short soak.
        rounding : bool or MakeableSteps
            To weight percents that can be ordered; False keeps every digit.
        keep_not_modelled : bool
            Keep elements that the file does not model (P, S, N, ...) as analysed.

        Returns
        -------
        Steel

        Raises
        ------
        InputError
            The temperature, or a soak without a matrix.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75}, name="heat 7")
        >>> steel.matrix_twin(celsius=1120).name
        'matrix of heat 7 at 1120 C'
        """
        refuse_without_unit(without_unit, "matrix_twin(celsius=1200)")
        steps = steps_of(rounding)
        if state is not None:
            twin = _core.matrix_twin(self._core, state, steps, keep_not_modelled)
        else:
            at = one_kelvin(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
            twin = _core.matrix_twin_at(self._core, at, steps, keep_not_modelled)
        return self._wrapped(twin)

    def twin_study(
        self,
        *without_unit: Any,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        others_celsius: Iterable[Any] | None = None,
        others_fahrenheit: Iterable[Any] | None = None,
        rounding: bool | MakeableSteps = True,
        keep_not_modelled: bool = False,
    ) -> TwinStudy:
        """The matrix twin, and the carbide it still holds.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : float
            Exactly one of them: where the matrix is taken.
        others_celsius, others_fahrenheit : iterable of float, optional
            Further temperatures for the twin: one of them.

        The other parameters are those of `matrix_twin`.

        Returns
        -------
        TwinStudy
            ``twin`` is the steel; ``same`` and ``others`` are its soaks.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75}, name="heat 7")
        >>> study = steel.twin_study(celsius=1050, others_celsius=[950])
        >>> study.others[0].carbide_volume_percent > study.same.carbide_volume_percent
        True
        """
        refuse_without_unit(without_unit, "twin_study(celsius=1200)")
        at, unit = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        others = _others(others_celsius, others_fahrenheit)
        steps = steps_of(rounding)
        return _core.twin_study(
            self._core, at, others, steps, keep_not_modelled, unit
        )

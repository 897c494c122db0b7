"""The steel with something changed: methods that Steel inherits."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Self

from ._core import CompiledSteel, ParameterSet
from .arguments import require
from .composition import as_weight_percent
from .texts import name_text


def parameter_set(given: object) -> ParameterSet:
    """The set itself; anything else is refused with gibbsteel.input.220."""
    remedy = 'give what load_parameters or default_parameters("liquid") return'
    return require(given, ParameterSet, "parameters", remedy)


class ChangeMethods:
    """Other weight percents, other parameters."""

    _core: CompiledSteel

    @classmethod
    def _wrapped(cls, core: CompiledSteel) -> Self:
        raise NotImplementedError

    def changed(
        self,
        composition: Mapping[str, float] | None = None,
        *,
        name: str = "",
        **elements: float,
    ) -> Self:
        """The steel with these weight percents instead, balance Fe.

        Parameters
        ----------
        composition : mapping of str to float, optional
            Weight percent by element symbol; a new element is added, the others keep
            their weight percent.
        name : str
            Name of the new steel. When left out, that of this one with what is changed,
            such as ``"M2, 0.9 C"``; a steel without a name stays without.
        **elements : float
            Weight percents as keywords instead of, or besides, the mapping.

        Returns
        -------
        Steel
            With the same parameter set; this steel does not change.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5}, name="heat 7")
        >>> steel.changed(C=0.65, Co=3)
        <Steel heat 7, 0.65 C, 3 Co: 0.65C 4.5Cr 3Co, balance Fe (wt%)>
        >>> steel.changed(C=0.65, name="heat 8")
        <Steel heat 8: 0.65C 4.5Cr, balance Fe (wt%)>
        """
        changes = as_weight_percent(composition, elements)
        return self._wrapped(self._core.changed(changes, name_text(name)))

    def with_parameters(self, parameters: ParameterSet) -> Self:
        """The same steel, computed with another parameter set.

        Parameters
        ----------
        parameters : ParameterSet
            For instance `default_parameters` with a layer.

        Returns
        -------
        Steel
            Of the same name and certificate; this steel does not change.

        Raises
        ------
        InputError
            When the set models no element of the steel.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel(C=0.95, Mn=0.4, Si=0.2)
        >>> melting = steel.with_parameters(gs.default_parameters("liquid"))
        >>> 1300 < melting.melting_range().solidus_celsius < 1400
        True
        """
        chosen = parameter_set(parameters)
        return self._wrapped(self._core.with_parameters(chosen))

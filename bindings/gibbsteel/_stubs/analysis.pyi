"""bind_analysis.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Compiled

class BoundCompound(_Compiled):
    """A compound that takes elements out of the calculation."""

    @property
    def name(self) -> str:
        """For instance ``"MnS"``."""
    @property
    def weight_percent(self) -> float:
        """Weight percent of the steel."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class MillAnalysis(_Compiled):
    """The mill certificate, sorted into modelled and not modelled."""

    @property
    def given(self) -> dict[str, float]:
        """As entered [weight percent]."""
    @property
    def modelled(self) -> dict[str, float]:
        """What enters the calculation, Fe (balance) first [weight percent]."""
    @property
    def not_modelled(self) -> dict[str, float]:
        """Known elements that the parameter file does not model [weight percent]."""
    @property
    def bound(self) -> list[BoundCompound]:
        """Compounds of tramp elements; empty unless asked for."""
    def brief(self) -> str:
        """As given, weight percent: ``"0.55C 4.5Cr, balance Fe"``."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

"""bind_search_options.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Compiled
from .parameters import ParameterSet

class SearchOptions(_Compiled):
    """Settings of a search for temperatures."""

    def __init__(
        self,
        *,
        node_spacing: float = 5.0,
        tolerance: float = 0.01,
        most_soaks: int = 20000,
    ) -> None: ...
    @property
    def node_spacing(self) -> float:
        """Of the soaks that the search starts from [K], 0.01 to 100."""
    @property
    def tolerance(self) -> float:
        """To which a temperature is located [K], 0.0001 to 1."""
    @property
    def most_soaks(self) -> int:
        """The search stops there and says so."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class PhaseField(_Compiled):
    """A stretch of temperatures with one set of phases, or with one kind of phase."""

    @property
    def kelvin(self) -> tuple[float, float]:
        """(low, high) [K]."""
    @property
    def celsius(self) -> tuple[float, float]:
        """(low, high) [C]."""
    @property
    def fahrenheit(self) -> tuple[float, float]:
        """(low, high) [F]."""
    @property
    def low_edge(self) -> str:
        """``"change"``, ``"range"`` (end of what was searched) or ``"gap"``."""
    @property
    def high_edge(self) -> str:
        """``"change"``, ``"range"`` (end of what was searched) or ``"gap"``."""
    @property
    def phases(self) -> list[str]:
        """Kinds, in the order of the file."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class PhaseGap(_Compiled):
    """Temperatures at which nothing is known."""

    @property
    def kelvin(self) -> tuple[float, float]:
        """(low, high) [K]."""
    @property
    def celsius(self) -> tuple[float, float]:
        """(low, high) [C]."""
    @property
    def fahrenheit(self) -> tuple[float, float]:
        """(low, high) [F]."""
    @property
    def reason(self) -> str:
        """One sentence."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def usual_range(parameters: ParameterSet) -> tuple[float, float]:
    """The range that is searched when none is given [K]."""

"""bind_dissolution.cpp; see ../_core.pyi."""

from collections.abc import Callable

from .analysis import MillAnalysis
from .compiled import _Compiled
from .search_options import PhaseField, SearchOptions
from .state import SoakWarning
from .steel import CompiledSteel, SoakOptions

class Dissolution(_Compiled):
    """The temperature above which a kind of phase is gone."""

    def _repr_html_(self) -> str: ...
    @property
    def kelvin(self) -> float | None:
        """Temperature [K]; None unless `status` is ``"found"``."""
    @property
    def celsius(self) -> float | None:
        """Temperature [C]; None unless `status` is ``"found"``."""
    @property
    def fahrenheit(self) -> float | None:
        """Temperature [F]; None unless `status` is ``"found"``."""
    @property
    def kind(self) -> str:
        """Kind of phase."""
    @property
    def status(self) -> str:
        """``"found"``, ``"never present"``, ``"still present"`` or ``"not known"``."""
    @property
    def uncertainty_at_least(self) -> float:
        """One standard deviation of the temperature by the file [K], Eq. (B8)."""
    @property
    def intervals(self) -> list[PhaseField]:
        """Where the kind is present."""
    @property
    def text(self) -> str:
        """The answer, or why there is none."""
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def searched_kelvin(self) -> tuple[float, float]:
        """(low, high) of the range that was searched [K]."""
    @property
    def searched_celsius(self) -> tuple[float, float]:
        """(low, high) of the range that was searched [C]."""
    @property
    def searched_fahrenheit(self) -> tuple[float, float]:
        """(low, high) of the range that was searched [F]."""
    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate."""
    @property
    def parameters(self) -> str:
        """Title and edition of the file."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """On both sides of the answer; without one, at the ends of the range."""

def dissolution_temperature(
    steel: CompiledSteel,
    kind: str,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> Dissolution: ...

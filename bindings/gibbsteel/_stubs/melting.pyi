"""bind_melting.cpp; see ../_core.pyi."""

from collections.abc import Callable

from .analysis import MillAnalysis
from .compiled import _Compiled
from .parameters import ParameterSet
from .search_options import PhaseField, SearchOptions
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions

class MeltingRange(_Compiled):
    """Between which temperatures a steel melts."""

    def _repr_html_(self) -> str: ...
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
    def solidus_kelvin(self) -> float | None:
        """The first liquid forms on heating [K]; None where that is not found."""
    @property
    def solidus_celsius(self) -> float | None:
        """The first liquid forms on heating [C]; None where that is not found."""
    @property
    def solidus_fahrenheit(self) -> float | None:
        """The first liquid forms on heating [F]; None where that is not found."""
    @property
    def liquidus_kelvin(self) -> float | None:
        """The last solid is gone [K]; None where that is not found."""
    @property
    def liquidus_celsius(self) -> float | None:
        """The last solid is gone [C]; None where that is not found."""
    @property
    def liquidus_fahrenheit(self) -> float | None:
        """The last solid is gone [F]; None where that is not found."""
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def status(self) -> str:
        """How it ended.

        ``"found"``, ``"solidus only"``, ``"liquidus only"``, ``"partly molten"``,
        ``"solid"``, ``"molten"``, ``"no liquid"`` or ``"not known"``.
        """
    @property
    def solids_at_solidus(self) -> list[str]:
        """Kinds just below the solidus; empty without one."""
    @property
    def primary_solids(self) -> list[str]:
        """Kinds that melt last; empty without a liquidus."""
    @property
    def at_solidus(self) -> State:
        """The state just above the solidus: it holds the first liquid."""
    @property
    def at_liquidus(self) -> State:
        """The state just below the liquidus: it holds the last solid."""
    @property
    def fields(self) -> list[PhaseField]:
        """Upwards, of the whole range."""
    @property
    def text(self) -> str:
        """The answer, or why there is none."""
    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate."""
    @property
    def parameters(self) -> str:
        """Title and edition of the file."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of both states."""

def melting_search_range(parameters: ParameterSet) -> tuple[float, float]:
    """The range that is searched when none is given [K]."""

def melting_range(
    steel: CompiledSteel,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> MeltingRange: ...

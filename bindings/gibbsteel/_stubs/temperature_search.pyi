"""bind_temperature_search.cpp; see ../_core.pyi."""

from collections.abc import Callable

import pandas as pd

from .analysis import MillAnalysis
from .compiled import _Compiled
from .quantity import Quantity
from .search_options import PhaseGap, SearchOptions
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions

class Crossing(_Compiled):
    """A temperature with the wanted value."""

    @property
    def kelvin(self) -> float:
        """Temperature [K]."""
    @property
    def celsius(self) -> float:
        """Temperature [C]."""
    @property
    def fahrenheit(self) -> float:
        """Temperature [F]."""
    @property
    def bracket_width(self) -> float:
        """[K]"""
    @property
    def uncertainty_at_least(self) -> float:
        """One standard deviation of the temperature by the file [K], Eq. (B8)."""
    @property
    def kind(self) -> str:
        """``"crossing"``, or ``"jump"``: the quantity jumps across the value."""
    @property
    def rising(self) -> bool:
        """It grows with temperature."""
    @property
    def value(self) -> float:
        """Of `state`."""
    @property
    def below(self) -> float:
        """Value at the low end of the bracket."""
    @property
    def above(self) -> float:
        """Value at the high end of the bracket."""
    @property
    def slope(self) -> float:
        """Of the quantity [its unit/K]; NaN for a jump, and when not known."""
    @property
    def band(self) -> tuple[float, float]:
        """Between which a measurement should lie, of an estimate; else NaN."""
    @property
    def state(self) -> State:
        """The soak at this temperature; for a jump that below it."""

class TemperatureSearch(_Compiled):
    """All temperatures at which a quantity has a value."""

    def _repr_html_(self) -> str: ...
    @property
    def temperatures_kelvin(self) -> tuple[float, ...]:
        """Of all crossings, upwards [K]; empty when there is none."""
    @property
    def temperatures_celsius(self) -> tuple[float, ...]:
        """Of all crossings, upwards [C]; empty when there is none."""
    @property
    def temperatures_fahrenheit(self) -> tuple[float, ...]:
        """Of all crossings, upwards [F]; empty when there is none."""
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
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def quantity(self) -> str:
        """Name of the quantity."""
    @property
    def unit(self) -> str:
        """Of the quantity."""
    @property
    def target(self) -> float:
        """The value that was asked for."""
    @property
    def status(self) -> str:
        """How it ended.

        ``"found"``, ``"jumps over"`` (every crossing is a jump), ``"never reached"``,
        ``"always equal"``, ``"not computable"`` or ``"not known"``.
        """
    @property
    def crossings(self) -> list[Crossing]:
        """Upwards."""
    @property
    def equal_kelvin(self) -> list[tuple[float, float]]:
        """Where it has the value throughout [K]."""
    @property
    def lowest(self) -> tuple[float, float]:
        """(value, temperature [K]) of the soak with the lowest value."""
    @property
    def highest(self) -> tuple[float, float]:
        """(value, temperature [K]) of the soak with the highest value."""
    @property
    def gaps(self) -> list[PhaseGap]:
        """Upwards."""
    @property
    def no_value(self) -> list[PhaseGap]:
        """Where the quantity has no value, and why."""
    @property
    def soaks(self) -> int:
        """Number that the search took."""
    @property
    def stopped(self) -> str:
        """Why the range was not searched to its end; else empty."""
    @property
    def text(self) -> str:
        """The answer, or why there is none."""
    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate."""
    @property
    def parameters(self) -> str:
        """Title and edition of the parameter file."""
    @property
    def complete(self) -> bool:
        """True when nothing in the range is unknown."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of the crossings; without one, of `low` and `high`."""
    @property
    def band_of_nearest(self) -> tuple[float, float]:
        """Of an estimate that never reaches the value; else NaN."""
    @property
    def low(self) -> State:
        """The soak at the low end of what was searched."""
    @property
    def high(self) -> State:
        """The soak at the high end of what was searched."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per crossing."""

def temperature_for(
    steel: CompiledSteel,
    quantity: Quantity,
    value: float,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> TemperatureSearch: ...

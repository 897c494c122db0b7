"""bind_matching_temperature.cpp; see ../_core.pyi."""

from collections.abc import Callable

import pandas as pd

from .compiled import _Compiled
from .quantity import Quantity
from .search_options import SearchOptions
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions
from .temperature_search import TemperatureSearch

class MatchingTemperature(_Compiled):
    """The temperatures at which another steel has the value of a reference."""

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
    def reference(self) -> State:
        """The soak to be matched."""
    @property
    def value(self) -> float:
        """Of the quantity in `reference`."""
    @property
    def search(self) -> TemperatureSearch:
        """Of the other steel: status and crossings."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of the reference, those of the search, and of hardening
        estimates of two families."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per crossing, with the reference."""

def matching_temperature(
    reference: State,
    steel: CompiledSteel,
    quantity: Quantity,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> MatchingTemperature: ...

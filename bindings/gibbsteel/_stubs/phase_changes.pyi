"""bind_phase_changes.cpp; see ../_core.pyi."""

from collections.abc import Callable
from typing import ClassVar

import pandas as pd

from .compiled import _Compiled
from .dissolution import Dissolution
from .search_options import PhaseField, PhaseGap, SearchOptions
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions

class PhaseChange(_Compiled):
    """Phases appear or disappear; all words are those of heating."""

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
        """[K]: `below` and `above` are that far apart."""
    @property
    def uncertainty_at_least(self) -> float:
        """One standard deviation of the temperature by the file [K], Eq. (B8)."""
    @property
    def appears(self) -> list[str]:
        """Kinds."""
    @property
    def disappears(self) -> list[str]:
        """Kinds."""
    @property
    def invariant(self) -> bool:
        """True: several phases react at one temperature, and amounts jump."""
    @property
    def text(self) -> str:
        """One line."""
    @property
    def below(self) -> State:
        """State below the change."""
    @property
    def above(self) -> State:
        """State above the change."""

class TransformationLimit(_Compiled):
    """A temperature that exists (else None), and why."""

    @property
    def kelvin(self) -> float | None:
        """Temperature [K]."""
    @property
    def celsius(self) -> float | None:
        """Temperature [C]."""
    @property
    def fahrenheit(self) -> float | None:
        """Temperature [F]."""
    @property
    def text(self) -> str:
        """One line."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class PhaseChanges(_Compiled):
    """Where phases appear and disappear on heating."""

    def _repr_html_(self) -> str: ...
    @property
    def temperatures_kelvin(self) -> tuple[float, ...]:
        """Of all changes, upwards [K]; empty when there is none."""
    @property
    def temperatures_celsius(self) -> tuple[float, ...]:
        """Of all changes, upwards [C]; empty when there is none."""
    @property
    def temperatures_fahrenheit(self) -> tuple[float, ...]:
        """Of all changes, upwards [F]; empty when there is none."""
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
    def tolerance(self) -> float:
        """To which changes are located [K]."""
    @property
    def changes(self) -> list[PhaseChange]:
        """Upwards."""
    @property
    def fields(self) -> list[PhaseField]:
        """Upwards."""
    @property
    def gaps(self) -> list[PhaseGap]:
        """Upwards."""
    @property
    def ae1(self) -> TransformationLimit:
        """Austenite first forms."""
    @property
    def ae3(self) -> TransformationLimit:
        """The last ferrite is gone."""
    @property
    def acm(self) -> TransformationLimit:
        """M3C is gone, above Ae3."""
    @property
    def low(self) -> State:
        """State at the low end."""
    @property
    def high(self) -> State:
        """State at the high end of what was searched."""
    @property
    def soaks(self) -> int:
        """Number that the search took."""
    @property
    def stopped(self) -> str:
        """Why the range was not searched to its end; else empty."""
    @property
    def complete(self) -> bool:
        """True when nothing in the range is unknown."""
    @property
    def kinds(self) -> list[str]:
        """Kinds that are present anywhere."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of all states."""
    def intervals(self, kind: str) -> list[PhaseField]:
        """Where a kind is present."""
    def dissolution(self, kind: str) -> Dissolution:
        """The temperature above which a kind is gone."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per change."""

def phase_changes(
    steel: CompiledSteel,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> PhaseChanges: ...

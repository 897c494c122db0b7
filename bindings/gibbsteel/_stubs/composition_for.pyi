"""bind_composition_for.cpp; see ../_core.pyi."""

from collections.abc import Callable

from .compiled import _Compiled
from .quantity import Quantity
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions

class CompositionCrossing(_Compiled):
    """A composition at which the quantity has the value."""

    @property
    def weight_percent(self) -> float:
        """Of the element."""
    @property
    def bracket_width(self) -> float:
        """[weight percent]"""
    @property
    def kind(self) -> str:
        """``"crossing"``, or ``"jump"``: the quantity jumps across the value."""
    @property
    def rising(self) -> bool:
        """The quantity grows with the element."""
    @property
    def value(self) -> float:
        """Of `state`."""
    @property
    def below(self) -> float:
        """At the low end of the bracket."""
    @property
    def above(self) -> float:
        """At the high end of the bracket."""
    @property
    def slope(self) -> float:
        """Of the quantity [its unit/wt%]; NaN for a jump, and when not known."""
    @property
    def band(self) -> tuple[float, float]:
        """Between which a measurement should lie, of an estimate; else NaN."""
    @property
    def state(self) -> State:
        """The soak at this composition; for a jump that with less."""

class CompositionSearch(_Compiled):
    """All weight percents of one element at which a quantity has a value."""

    def _repr_html_(self) -> str: ...
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def element(self) -> str:
        """The one that is varied."""
    @property
    def quantity(self) -> str:
        """Name of the quantity."""
    @property
    def unit(self) -> str:
        """Unit of the quantity."""
    @property
    def target(self) -> float:
        """The wanted value."""
    @property
    def celsius(self) -> float:
        """Temperature of the soaks."""
    @property
    def range(self) -> tuple[float, float]:
        """Lowest and highest weight percent."""
    @property
    def status(self) -> str:
        """``"found"``, ``"jumps over"``, ``"never reached"``, ..."""
    @property
    def crossings(self) -> list[CompositionCrossing]:
        """Upwards."""
    @property
    def weight_percents(self) -> list[float]:
        """Those of the crossings, jumps included."""
    @property
    def equal(self) -> list[tuple[float, float]]:
        """Where the quantity has the value throughout."""
    @property
    def lowest(self) -> float:
        """Lowest value of all soaks of the search."""
    @property
    def highest(self) -> float:
        """Highest value of all soaks of the search."""
    @property
    def soaks(self) -> int:
        """That the search took."""
    @property
    def stopped(self) -> str:
        """Why the range is not searched to its end; else empty."""
    @property
    def text(self) -> str:
        """One sentence: the answer, or why there is none."""
    @property
    def complete(self) -> bool:
        """The whole range is known."""
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

def composition_for(
    steel: CompiledSteel,
    element: str,
    quantity: Quantity,
    value: float,
    low: float,
    high: float,
    kelvin: float,
    options: SoakOptions,
    steps: int = 40,
    tolerance: float = 0.0001,
    most_soaks: int = 20000,
    progress: Callable[[int], object] | None = None,
) -> CompositionSearch:
    """See gibbsteel.Steel.composition_for."""

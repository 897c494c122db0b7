"""bind_design.cpp; see ../_core.pyi."""

from collections.abc import Callable, Sequence
from typing import ClassVar

from ..steel import Steel
from .compiled import _Compiled
from .matrix_twin import MakeableSteps
from .quantity import Quantity
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions

class DesignTarget(_Compiled):
    """One number of a soak and what it shall be."""

    def __init__(
        self,
        quantity: Quantity,
        kelvin: float,
        sense: str,
        wanted: float,
        tolerance: float | None = None,
        unit: str = "celsius",
    ) -> None: ...
    @property
    def quantity(self) -> Quantity:
        """What the target is about."""
    @property
    def kelvin(self) -> float:
        """Temperature of the soak."""
    @property
    def sense(self) -> str:
        """``"equal"``, ``"at least"`` or ``"at most"``."""
    @property
    def wanted(self) -> float:
        """In the unit of the quantity."""
    @property
    def tolerance(self) -> float:
        """How far off still counts as met; 0 for a limit that is to be kept."""

def matrix_targets(state: State, elements: Sequence[str]) -> list[DesignTarget]:
    """See gibbsteel.matrix_targets."""

class TargetOutcome(_Compiled):
    """How a target came out."""

    @property
    def name(self) -> str:
        """Of the quantity."""
    @property
    def unit(self) -> str:
        """Of the quantity."""
    @property
    def celsius(self) -> float:
        """Temperature of the soak."""
    @property
    def sense(self) -> str:
        """``"equal"``, ``"at least"`` or ``"at most"``."""
    @property
    def wanted(self) -> float:
        """In the unit of the quantity."""
    @property
    def tolerance(self) -> float:
        """How far off still counts as met; 0 for a limit that is kept."""
    @property
    def value(self) -> float:
        """Of the final soak."""
    @property
    def miss(self) -> float:
        """Value less wanted; 0 for a limit that is kept."""
    @property
    def met(self) -> bool:
        """The miss is within the tolerance; a limit is kept."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Design(_Compiled):
    """A composition, and how it meets its targets."""

    def _repr_html_(self) -> str: ...
    @property
    def status(self) -> str:
        """``"met"``, ``"compromise"``, ``"infeasible"``, ``"not converged"`` or
        ``"stopped"``."""
    @property
    def steel(self) -> Steel:
        """The result."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Of the elements that were free."""
    @property
    def at_bound(self) -> list[str]:
        """Elements held back by a bound."""
    @property
    def targets(self) -> list[TargetOutcome]:
        """How each came out."""
    @property
    def states(self) -> list[State]:
        """Final soaks, one per temperature of the targets."""
    @property
    def soaks(self) -> int:
        """That the search took."""
    @property
    def starts(self) -> int:
        """That were followed."""
    @property
    def text(self) -> str:
        """One sentence: the answer, or why there is none."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of the final soaks."""

def design(
    start: CompiledSteel,
    elements: Sequence[tuple[str, float, float]],
    targets: Sequence[DesignTarget],
    starts: int = 6,
    candidates: int = 24,
    most_steps: int = 80,
    *,
    steps: MakeableSteps,
    soak: SoakOptions,
    progress: Callable[[int], object] | None = None,
) -> Design:
    """See gibbsteel.design."""

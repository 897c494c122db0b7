"""bind_matrix_twin.cpp; see ../_core.pyi."""

from collections.abc import Sequence
from typing import ClassVar

from ..steel import Steel
from .compiled import _Compiled
from .state import SoakWarning, State
from .steel import CompiledSteel
from .sweep import Sweep

class MakeableSteps(_Compiled):
    """Steps to which weight percents are rounded."""

    def __init__(
        self, steps: dict[str, float] = {"C": 0.01}, others: float = 0.05
    ) -> None: ...
    @staticmethod
    def none() -> MakeableSteps:
        """Leaves every number as it is."""
    @property
    def steps(self) -> dict[str, float]:
        """Element -> step [weight percent]."""
    @property
    def others(self) -> float:
        """Of elements not listed [weight percent]."""
    @property
    def round(self) -> bool:
        """False: nothing is rounded."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class TwinStudy(_Compiled):
    """A matrix twin and its residual carbide at the same and at other temperatures."""

    def _repr_html_(self) -> str: ...
    @property
    def reference(self) -> State:
        """The full-carbide steel at the soak."""
    @property
    def exact(self) -> dict[str, float]:
        """Its matrix before rounding [weight percent]."""
    @property
    def twin(self) -> Steel:
        """The steel made from it."""
    @property
    def same(self) -> State:
        """The twin at the same soak."""
    @property
    def others(self) -> Sweep:
        """The twin at the other temperatures."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """That the twin is of another hardening family."""

def matrix_twin(
    steel: CompiledSteel, state: State, steps: MakeableSteps, keep_not_modelled: bool
) -> CompiledSteel:
    """See gibbsteel.Steel.matrix_twin."""

def matrix_twin_at(
    steel: CompiledSteel, kelvin: float, steps: MakeableSteps, keep_not_modelled: bool
) -> CompiledSteel:
    """The same from a soak."""

def twin_study(
    steel: CompiledSteel,
    kelvin: float,
    others: Sequence[float],
    steps: MakeableSteps,
    keep_not_modelled: bool,
    unit: str,
) -> TwinStudy:
    """See gibbsteel.Steel.twin_study."""

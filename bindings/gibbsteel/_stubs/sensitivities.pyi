"""bind_sensitivities.cpp; see ../_core.pyi."""

from collections.abc import Sequence

import pandas as pd

from .compiled import _Compiled
from .state import State
from .state_slope import StateSlope
from .steel import CompiledSteel, SoakOptions

class Sensitivities(_Compiled):
    """A state, and the exact derivatives of every number in it."""

    @property
    def state(self) -> State:
        """The soak."""
    @property
    def slopes(self) -> list[StateSlope]:
        """Temperature first, then elements, then parameters."""
    @property
    def inputs(self) -> list[str]:
        """Names of all inputs."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per quantity, one column per input."""
    def __getitem__(self, name: str) -> StateSlope: ...
    def __contains__(self, name: object) -> bool: ...
    def __len__(self) -> int: ...

def sensitivities(
    steel: CompiledSteel,
    kelvin: float,
    options: SoakOptions,
    elements: Sequence[str] | None,
    parameters: Sequence[str],
    all_parameters: bool,
) -> Sensitivities:
    """Soaks and differentiates, Eq. (S1) to (S5)."""

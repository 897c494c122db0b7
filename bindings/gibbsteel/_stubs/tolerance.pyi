"""bind_tolerance.cpp; see ../_core.pyi."""

from collections.abc import Callable, Sequence

import pandas as pd

from .compiled import _Array, _Compiled
from .quantity import Quantity
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions
from .tolerance_parts import PhaseShare, QuantityBand, TolerancedInput, UnusableSample

class HeatTolerances(_Compiled):
    """What scatters."""

    def __init__(
        self,
        *,
        ranges: Sequence[tuple[str, float, float]],
        standard_deviations: dict[str, float],
        furnace_error: float,
        segregation_percent: float,
    ) -> None: ...

class ToleranceOptions(_Compiled):
    """Settings of a tolerance band."""

    def __init__(
        self,
        soak: SoakOptions,
        samples: int,
        seed: int,
        percentiles: Sequence[float],
        corners: bool,
        segregated_carbon: str,
        threads: int,
    ) -> None: ...

class ToleranceBand(_Compiled):
    """What scatter of heat, furnace and place does to a state."""

    def _repr_html_(self) -> str: ...
    @property
    def nominal(self) -> State:
        """The State of the steel as it is."""
    @property
    def inputs(self) -> list[TolerancedInput]:
        """What scatters."""
    @property
    def segregated_carbon(self) -> str:
        """What carbon does where the alloy content is segregated."""
    @property
    def percentiles(self) -> list[float]: ...
    @property
    def quantities(self) -> list[QuantityBand]: ...
    @property
    def phases(self) -> list[PhaseShare]:
        """How often each phase is there."""
    @property
    def samples_asked(self) -> int: ...
    @property
    def samples(self) -> int:
        """Soaked, the unusable ones included."""
    @property
    def corners(self) -> int:
        """Distinct corners soaked."""
    @property
    def cancelled(self) -> bool:
        """True: holds the part that is done."""
    @property
    def unusable(self) -> list[UnusableSample]:
        """Samples left out, with the reason."""
    @property
    def unusable_corners(self) -> list[UnusableSample]: ...
    @property
    def warnings(self) -> list[SoakWarning]: ...
    @property
    def usable(self) -> bool:
        """False: the nominal state is not usable, and nothing else was soaked."""
    @property
    def sample_inputs(self) -> _Array:
        """Array (samples, inputs), as drawn; units as `inputs`."""
    @property
    def sample_values(self) -> _Array:
        """Array (samples, quantities); NaN for an unusable sample."""
    def to_frame(self) -> pd.DataFrame:
        """Table of the band (pandas), one row per quantity."""
    def __getitem__(self, name: str) -> QuantityBand: ...
    def __len__(self) -> int: ...

def tolerance_band(
    steel: CompiledSteel,
    kelvin: float,
    tolerances: HeatTolerances,
    quantities: Sequence[Quantity],
    options: ToleranceOptions,
    progress: Callable[[int], object] | None,
) -> ToleranceBand:
    """See Steel.tolerance_band."""

def default_quantities(state: State) -> list[Quantity]:
    """What a tolerance band follows when nothing else is asked for."""

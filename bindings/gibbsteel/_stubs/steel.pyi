"""bind_steel.cpp; see ../_core.pyi."""

from collections.abc import Callable, Sequence

from .analysis import MillAnalysis
from .compiled import _Compiled
from .parameters import ParameterSet
from .solve import SolveOptions
from .state import State
from .sweep import Sweep

class SoakOptions(_Compiled):
    """Settings of a soak."""

    def __init__(
        self,
        *,
        graphite: bool,
        phases: Sequence[str] | None,
        suppressed: Sequence[str],
        at_soak_temperature: bool,
        solve: SolveOptions,
        prove_every: int,
        temperature_unit: str,
    ) -> None: ...

class CompiledSteel(_Compiled):
    """The compiled half of gibbsteel.Steel."""

    def __init__(
        self,
        weight_percent: dict[str, float],
        name: str,
        parameters: ParameterSet,
        bind_tramp_elements: bool,
    ) -> None: ...
    @property
    def name(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate, sorted into modelled and not modelled."""
    @property
    def parameters(self) -> ParameterSet:
        """The parameter set in use."""
    @property
    def binds_tramp_elements(self) -> bool: ...
    def changed(self, weight_percent: dict[str, float], name: str) -> CompiledSteel: ...
    def with_parameters(self, parameters: ParameterSet) -> CompiledSteel: ...
    def soak(self, kelvin: float, options: SoakOptions) -> State:
        """Equilibrium at one temperature."""
    def sweep(
        self,
        kelvin: Sequence[float],
        options: SoakOptions,
        progress: Callable[[int], object] | None,
    ) -> Sweep:
        """Many soaks; `progress` gets the number done and stops the work by False."""
    def brief(self) -> str:
        """One line."""

"""bind_quantity.cpp; see ../_core.pyi."""

from collections.abc import Callable

from .compiled import _Compiled
from .errors import Problem
from .parameters import ParameterSet
from .state import State
from .state_slope import StateSlope

class Quantity(_Compiled):
    """A number that every usable state has."""

    def __init__(
        self, name: str, unit: str, function: Callable[[State], float]
    ) -> None: ...
    @property
    def name(self) -> str:
        """For tables."""
    @property
    def unit(self) -> str:
        """Such as "wt%" or "vol%"; empty for a pure number."""
    @property
    def label(self) -> str:
        """Name with the unit."""
    @property
    def by_family(self) -> bool:
        """True: it rests on the hardening family of the steel."""
    @property
    def has_band(self) -> bool:
        """True: its values come with a band, as hardening estimates do."""
    def band(self, state: State) -> tuple[float, float]:
        """Low and high end of the band of its value; NaN where there is none."""
    def value(self, state: State) -> float:
        """NaN when the state is not usable."""
    def problems(self, parameters: ParameterSet) -> list[Problem]:
        """Elements and kinds of phase that it names and the parameter set lacks."""
    def slope(self, state: State, slope: StateSlope) -> float:
        """Derivative, given that of the state."""

def quantity_matrix(element: str) -> Quantity:
    """See gibbsteel.quantities, as for the functions below."""

def quantity_in_phase(kind: str, element: str) -> Quantity: ...

def quantity_in_carbides(element: str) -> Quantity: ...

def quantity_volume_percent(kind: str) -> Quantity: ...

def quantity_mass_percent(kind: str) -> Quantity: ...

def quantity_driving_force(kind: str) -> Quantity: ...

def quantity_carbide_volume_percent() -> Quantity: ...

def quantity_carbide_mass_percent() -> Quantity: ...

def quantity_carbon_activity() -> Quantity: ...

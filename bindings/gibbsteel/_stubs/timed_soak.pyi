"""bind_timed_soak.cpp; see ../_core.pyi."""

from collections.abc import Sequence

from .compiled import _Compiled
from .measured_carbide import ShortSoak
from .parameters import ParameterSet
from .quantity import Quantity
from .state import State

class MinutesFor(_Compiled):
    """How long until the matrix holds so much of an element."""

    @property
    def status(self) -> str:
        """'found', 'at once', 'never reached' or 'too long'."""
    @property
    def minutes(self) -> float:
        """At temperature; 0 at once, NaN when not found."""
    @property
    def low_minutes(self) -> float:
        """A third of them, as far as size and diffusion are known."""
    @property
    def high_minutes(self) -> float:
        """Three times them."""
    @property
    def at_first(self) -> float:
        """Of the element in the matrix by the short-soak limit [wt%]."""
    @property
    def at_last(self) -> float:
        """At the end [wt%]."""
    @property
    def text(self) -> str:
        """One sentence."""

def minutes_for(
    state: State,
    element: str,
    weight_percent: float,
    particle_micrometres: float,
    annealed_kelvin: float | None,
    parameters: ParameterSet | None,
) -> MinutesFor:
    """See gibbsteel.State.minutes_for."""

default_particle_micrometres: float

def timed_soaks(
    state: State,
    minutes: Sequence[float],
    particle_micrometres: float,
    annealed_kelvin: float | None,
    parameters: ParameterSet | None,
) -> list[ShortSoak]:
    """See gibbsteel.State.timed_soaks."""

def quantity_timed_soak_matrix(
    element: str,
    minutes: float,
    particle_micrometres: float,
    annealed_kelvin: float | None,
    parameters: ParameterSet | None,
) -> Quantity:
    """See gibbsteel.quantities.timed_soak_matrix."""

def quantity_after_minutes(
    quantity: Quantity,
    minutes: float,
    particle_micrometres: float,
    annealed_kelvin: float | None,
    parameters: ParameterSet | None,
) -> Quantity:
    """See gibbsteel.quantities.after_minutes."""

"""bind_state_slope.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Compiled
from .occurrence import Occurrence
from .state import Matrix

class Input(_Compiled):
    """What a slope is taken with respect to."""

    @property
    def kind(self) -> str:
        """'temperature', 'element' or 'parameter'."""
    @property
    def name(self) -> str:
        """'temperature', an element, or the place in the parameter file."""
    @property
    def unit(self) -> str:
        """Unit of the input."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class StateSlope(_Compiled):
    """Derivatives of every number of a state with respect to one input."""

    @property
    def input(self) -> Input:
        """What the slopes are taken with respect to."""
    @property
    def occurrences(self) -> list[Occurrence]:
        """In the order of the state's."""
    @property
    def matrix(self) -> Matrix:
        """All matrix phases together."""
    @property
    def carbide_volume_percent(self) -> float:
        """Per unit of the input, as all numbers here."""
    @property
    def carbide_mass_percent(self) -> float: ...
    @property
    def carbon_activity(self) -> float: ...
    @property
    def gibbs_energy(self) -> float: ...
    @property
    def density(self) -> float: ...
    @property
    def chemical_potential(self) -> dict[str, float]: ...
    @property
    def driving_force(self) -> dict[str, float]: ...
    @property
    def one_sided(self) -> bool:
        """True close to a phase change: holds on the side of the state's phases."""
    @property
    def remark(self) -> str:
        """Why, when one-sided or not available; else empty."""
    def __getitem__(self, name: str) -> Occurrence: ...

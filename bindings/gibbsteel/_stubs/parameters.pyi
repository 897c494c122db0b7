"""bind_parameters.cpp; see ../_core.pyi."""

from collections.abc import Sequence
from typing import ClassVar

from .compiled import _Compiled
from .phase_model import PhaseModel
from .state_slope import Input

class ParameterSet(_Compiled):
    """Everything known about elements and phases, as read from parameter files."""

    @property
    def title(self) -> str:
        """Title and edition."""
    @property
    def files(self) -> list[str]:
        """Names of the files, lowest layer first."""
    @property
    def elements(self) -> list[str]:
        """Symbols of the elements that are modelled."""
    @property
    def phases(self) -> list[str]:
        """Names of the phase models."""
    @property
    def curves(self) -> list[str]:
        """Names of the curves."""
    @property
    def sources(self) -> dict[str, str]:
        """Key -> citation."""
    @property
    def weight_percent_validity(self) -> dict[str, tuple[float, float]]:
        """Element -> (low, high) [weight percent]."""
    @property
    def kelvin_validity(self) -> tuple[float, float]:
        """(low, high) [K]."""
    @property
    def parameter_inputs(self) -> list[Input]:
        """The numbers that sensitivities can be taken to."""
    @property
    def reference_state(self) -> str:
        """What the chemical potentials refer to."""
    @property
    def content_hash(self) -> str:
        """16 hexadecimal digits that identify the content."""
    def phase_model(self, name: str, elements: Sequence[str]) -> PhaseModel:
        """One phase compiled for the given elements."""
    def curve_value(self, name: str, kelvin: float) -> float:
        """Value of a named curve [J/mol]."""
    def _repr_html_(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def load_parameters(file: str, on_top_of: ParameterSet | None = None) -> ParameterSet:
    """Read and check a parameter file; raises DataError."""

def parse_parameters(
    text: str, file_name: str, on_top_of: ParameterSet | None = None
) -> ParameterSet:
    """Check the text of a parameter file; raises DataError."""

def write_parameters(parameters: ParameterSet) -> str:
    """The whole set as the text of one file, in canonical form."""

def sources_page(parameters: ParameterSet) -> str:
    """Where every number of the set comes from, as a page of Markdown."""

def default_parameters() -> ParameterSet:
    """The set that is compiled in; equal to the packaged file."""

"""bind_equilibrium.cpp; see ../_core.pyi."""

from collections.abc import Sequence
from typing import TypedDict

from .compiled import _Array, _Compiled
from .parameters import ParameterSet
from .solve import SolveOptions, SolveReport

class _PhasePoint(TypedDict):
    """A phase at one composition, as the minimizer lists it."""

    phase: str
    amount: float
    site_fractions: _Array
    driving_force: float

class Equilibrium(_Compiled):
    """What the minimizer found."""

    @property
    def report(self) -> SolveReport:
        """How it went; look at ``report.usable`` first."""
    @property
    def kelvin(self) -> float:
        """Temperature [K]."""
    @property
    def gibbs_energy(self) -> float:
        """[J/mol of atoms]; NaN when not usable."""
    @property
    def chemical_potential(self) -> dict[str, float]:
        """Element -> [J/mol]."""
    @property
    def present(self) -> list[_PhasePoint]:
        """What is present; amounts in mol of formula units per mol of atoms."""
    @property
    def absent(self) -> list[_PhasePoint]:
        """Distinct local minima that are not present, the nearest first."""

def minimize(
    parameters: ParameterSet,
    elements: Sequence[str],
    mole_fractions: Sequence[float],
    kelvin: float,
    phases: Sequence[str],
    options: SolveOptions,
) -> Equilibrium:
    """Global minimum of the Gibbs energy, Eq. (E1)."""

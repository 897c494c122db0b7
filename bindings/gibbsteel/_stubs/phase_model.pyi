"""bind_phase_model.cpp; see ../_core.pyi."""

from collections.abc import Sequence
from typing import Any

from .compiled import _Array, _Compiled

class Constituent(_Compiled):
    """A constituent of a phase model."""

    @property
    def name(self) -> str:
        """Element symbol or ``"vacancy"``."""
    @property
    def sublattice(self) -> int:
        """Index from 0."""

class PhaseDerivatives(_Compiled):
    """Energy and derivatives per mole of formula units, Eq. (G1)."""

    @property
    def value(self) -> float:
        """G [J/mol]."""
    @property
    def dt(self) -> float:
        """dG/dT = -S [J/(mol K)]."""
    @property
    def dt2(self) -> float:
        """d2G/dT2 [J/(mol K^2)]."""
    @property
    def dy(self) -> _Array:
        """dG/dy [J/mol], shape (n,)."""
    @property
    def dydt(self) -> _Array:
        """d2G/dydT [J/(mol K)], shape (n,)."""
    @property
    def dy2(self) -> _Array:
        """d2G/dy2 [J/mol], shape (n, n)."""

class PhaseModel(_Compiled):
    """One phase compiled for a list of elements."""

    @property
    def name(self) -> str:
        """Name of the phase in the parameter file."""
    @property
    def reachable(self) -> bool:
        """False when a sublattice has no constituent left."""
    @property
    def constituents(self) -> list[Constituent]:
        """All constituents, in the order of site fractions."""
    @property
    def sites(self) -> _Array:
        """Sites of the sublattice of each constituent, shape (n,)."""
    def curie_temperature(self, site_fractions: Sequence[float]) -> float:
        """Effective Curie temperature [K], Eq. (G5)."""
    def magnetic_moment(self, site_fractions: Sequence[float]) -> float:
        """Effective moment [Bohr magnetons], Eq. (G5)."""
    def _evaluate(
        self, kelvin: float, site_fractions: Sequence[float]
    ) -> PhaseDerivatives:
        """Gibbs energy and all derivatives, Eq. (G1)."""
    # The next two are added by phase_model.py.
    def derivatives(
        self,
        *,
        site_fractions: Sequence[float],
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
    ) -> PhaseDerivatives:
        """Gibbs energy and all derivatives per mole of formula units, Eq. (G1)."""
    def gibbs_energy(
        self,
        *,
        site_fractions: Sequence[float],
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
    ) -> float:
        """Gibbs energy [J/mol of formula units], Eq. (G1)."""

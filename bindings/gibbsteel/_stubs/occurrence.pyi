"""bind_occurrence.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Compiled

class Occurrence(_Compiled):
    """One phase region of a state: all its particles together."""

    @property
    def name(self) -> str:
        """Unique in its state."""
    @property
    def kind(self) -> str:
        """Name without the words that tell two of a kind apart."""
    @property
    def phase(self) -> str:
        """Phase model in the parameter file."""
    @property
    def role(self) -> str:
        """``"matrix"``, ``"carbide"`` or ``"other"``."""
    @property
    def mole_percent(self) -> float:
        """Percent of the atoms."""
    @property
    def mass_percent(self) -> float:
        """Percent of the mass."""
    @property
    def volume_percent(self) -> float:
        """Percent of the volume; NaN without volume data."""
    @property
    def molar_mass(self) -> float:
        """[g per mol of atoms]"""
    @property
    def molar_volume(self) -> float:
        """[cm3 per mol of atoms]; NaN without volume data."""
    @property
    def density(self) -> float:
        """[g/cm3]; NaN without volume data."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Composition of this occurrence [weight percent]."""
    @property
    def atom_fraction(self) -> dict[str, float]:
        """Composition of this occurrence, sum 1."""
    @property
    def site_fractions(self) -> list[dict[str, float]]:
        """One dict per sublattice, ``"vacancy"`` included."""
    @property
    def sites(self) -> list[float]:
        """Sites of each sublattice per formula unit."""
    def _repr_html_(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

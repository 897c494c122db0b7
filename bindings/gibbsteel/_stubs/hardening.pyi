"""bind_hardening.cpp; see ../_core.pyi."""

from typing import ClassVar

import pandas as pd

from .analysis import MillAnalysis
from .compiled import _Compiled
from .estimate import Estimate, HardeningFamily, TradeIndices
from .property_equations import PropertyEquations
from .quantity import Quantity
from .state import SoakWarning, State

class HardeningOptions(_Compiled):
    """Settings of hardening estimates; None is the default of C++."""

    def __init__(
        self,
        *,
        coldest_kelvin: float | None,
        family: str | None,
        martensite_start: str | None,
        retained_austenite: str | None,
        martensite_hardness: str | None,
        grain_pinning: str | None,
        particle_diameter: float | None,
        cooling_rate: float | None,
        equations: PropertyEquations | None,
    ) -> None: ...

class HardeningEstimates(_Compiled):
    """What quenching makes of a soaked steel."""

    def _repr_html_(self) -> str: ...
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def analysis(self) -> MillAnalysis:
        """MillAnalysis of the steel."""
    @property
    def parameters(self) -> str:
        """Title and edition of the set."""
    @property
    def parameters_hash(self) -> str:
        """Of its content."""
    @property
    def condition(self) -> str:
        """How it was soaked: ``"long-hold limit"``, ``"timed soak of 30 min"``."""
    @property
    def soak_kelvin(self) -> float:
        """Soak temperature [K]."""
    @property
    def soak_celsius(self) -> float:
        """Soak temperature [C]."""
    @property
    def coldest_kelvin(self) -> float:
        """Coldest temperature of the quench [K]."""
    @property
    def coldest_celsius(self) -> float:
        """Coldest temperature of the quench [C]."""
    @property
    def family(self) -> HardeningFamily:
        """The family that the estimates are made for."""
    @property
    def family_chosen(self) -> bool:
        """True: named by the caller; False: by composition."""
    @property
    def family_shares(self) -> dict[str, float]:
        """Share of each family, 0 to 1: more than one near a border."""
    @property
    def austenite(self) -> dict[str, float]:
        """Weight percents that the equations got."""
    @property
    def austenite_percent(self) -> float:
        """Austenite of the matrix, before the quench [vol%]."""
    @property
    def martensite_start(self) -> Estimate:
        """[C]"""
    @property
    def retained_austenite(self) -> Estimate:
        """[vol% of the steel]"""
    @property
    def retained_austenite_of_matrix(self) -> Estimate:
        """[vol% of the matrix]"""
    @property
    def hardness_hv(self) -> Estimate:
        """As quenched [HV]."""
    @property
    def hardness_hrc(self) -> Estimate:
        """As quenched [HRC]."""
    @property
    def grain_diameter(self) -> Estimate:
        """Austenite grain limit [um]."""
    @property
    def matrix_indices(self) -> TradeIndices:
        """Of all matrix phases together."""
    @property
    def steel_indices(self) -> TradeIndices:
        """Of the whole certificate."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """What to know about these estimates."""
    def to_frame(self) -> pd.DataFrame:
        """One row per estimate (pandas)."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def _hardening(state: State, options: HardeningOptions) -> HardeningEstimates:
    """Estimates of what a quench from this state gives."""

def quantity_martensite_start(options: HardeningOptions) -> Quantity:
    """[C]"""

def quantity_retained_austenite(options: HardeningOptions) -> Quantity:
    """[vol% of the steel]"""

def quantity_retained_austenite_of_matrix(options: HardeningOptions) -> Quantity:
    """[vol% of all matrix phases together]: what X-rays see between large carbides"""

def quantity_hardness_hv(options: HardeningOptions) -> Quantity:
    """As quenched [HV]."""

def quantity_hardness_hrc(options: HardeningOptions) -> Quantity:
    """As quenched [HRC]."""

def quantity_grain_limit(options: HardeningOptions) -> Quantity:
    """[um]"""

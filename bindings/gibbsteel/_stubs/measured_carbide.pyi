"""bind_measured_carbide.cpp; see ../_core.pyi."""

import os
from collections.abc import Sequence
from typing import Any, ClassVar

import pandas as pd

from .compiled import _Compiled
from .hardening import HardeningEstimates
from .parameters import ParameterSet
from .property_equations import PropertyEquations
from .quantity import Quantity
from .report import Report
from .state import State

class MeasuredCarbide(_Compiled):
    """Carbide of one kind, counted under the microscope."""

    def __init__(
        self,
        kind: str,
        volume_percent: float,
        standard_deviation: float = 0.0,
        smallest_counted: float | None = None,
    ) -> None: ...
    @property
    def kind(self) -> str:
        """For instance ``"M3C"``."""
    @property
    def volume_percent(self) -> float:
        """Of the steel."""
    @property
    def standard_deviation(self) -> float:
        """Of the count [volume percent]; 0 when not known."""
    @property
    def smallest_counted(self) -> float | None:
        """Smallest particle that was counted [micrometre]."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class CarbideInBalance(_Compiled):
    """A carbide as it entered the balance of a short soak."""

    @property
    def kind(self) -> str:
        """For instance ``"M3C"``."""
    @property
    def volume_percent(self) -> float:
        """As measured, kept or computed."""
    @property
    def standard_deviation(self) -> float:
        """Of the count [volume percent]."""
    @property
    def long_hold_volume(self) -> float:
        """In the state that was started from [volume percent]."""
    @property
    def measured(self) -> bool:
        """False: kept at the long-hold volume; of a limit or timed soak, computed."""
    @property
    def composition(self) -> str:
        """``"soak"`` or ``"annealed"``: where it was taken from."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Composition used."""
    @property
    def other_source_exists(self) -> bool:
        """True when the other source has the kind as well."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class MatrixBand(_Compiled):
    """One element of the matrix and how sure it is [weight percent]."""

    @property
    def element(self) -> str:
        """Symbol."""
    @property
    def value(self) -> float:
        """As on the state."""
    @property
    def long_hold(self) -> float:
        """In the state that was started from."""
    @property
    def standard_deviation(self) -> float:
        """From those of the counts."""
    @property
    def other_composition(self) -> float:
        """Of measured carbide with that of the other source; else `value`."""
    @property
    def low(self) -> float:
        """See measured_carbide.hpp; of a timed soak that of a third of the minutes."""
    @property
    def high(self) -> float:
        """Of a timed soak that of three times the minutes."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class ShortSoak(_Compiled):
    """Carbide of a short soak, seen or computed, and its matrix."""

    def _repr_html_(self) -> str: ...
    def report(self, **quench: Any) -> Report: ...
    def to_csv(self, path: str | os.PathLike[str]) -> None: ...
    def to_frame(self) -> pd.DataFrame: ...
    @property
    def state(self) -> State:
        """Of the short soak; no equilibrium."""
    @property
    def measured(self) -> list[MeasuredCarbide]:
        """As entered; empty where the carbide is computed."""
    @property
    def carbides(self) -> list[CarbideInBalance]:
        """As they entered the balance."""
    @property
    def bands(self) -> list[MatrixBand]:
        """Elements of the matrix."""
    @property
    def annealed_kelvin(self) -> float:
        """Annealing temperature for carbide compositions [K]."""
    @property
    def annealed_celsius(self) -> float:
        """The same [C]."""
    @property
    def annealed_fahrenheit(self) -> float:
        """The same [F]."""
    def band(self, element: str) -> MatrixBand:
        """The band of one element."""
    def hardening(
        self,
        *,
        coldest_celsius: Any = None,
        coldest_fahrenheit: Any = None,
        family: str | None = None,
        martensite_start: str | None = None,
        retained_austenite: str | None = None,
        martensite_hardness: str | None = None,
        grain_pinning: str | None = None,
        particle_diameter: float | None = None,
        cooling_rate: float | None = None,
        equations: PropertyEquations | None = None,
    ) -> HardeningEstimates:
        """What a quench gives; see gibbsteel.hardening.hardening."""

def with_measured_carbide(
    state: State,
    measured: Sequence[MeasuredCarbide],
    composition: str,
    annealed_kelvin: float | None,
    unlisted: str,
    parameters: ParameterSet | None,
) -> ShortSoak:
    """See gibbsteel.State.with_measured_carbide."""

def short_soak_limit(
    state: State, annealed_kelvin: float | None, parameters: ParameterSet | None
) -> ShortSoak:
    """See gibbsteel.State.short_soak_limit."""

def quantity_short_soak_matrix(
    element: str, annealed_kelvin: float | None, parameters: ParameterSet | None
) -> Quantity:
    """See gibbsteel.quantities.short_soak_matrix."""

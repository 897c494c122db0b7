"""bind_evidence.cpp; see ../_core.pyi."""

from typing import ClassVar

import pandas as pd

from .analysis import MillAnalysis
from .calibration_parts import Measurement
from .compiled import _Compiled
from .steel import CompiledSteel

class RecordedMeasurement(_Compiled):
    """A measurement and what is known of it."""

    @property
    def measurement(self) -> Measurement:
        """For calibrate()."""
    @property
    def source(self) -> str:
        """Citation."""
    @property
    def confidence(self) -> str:
        """'high', 'medium' or 'low'; empty of one of your own."""
    @property
    def from_memory(self) -> bool:
        """Quoted from memory, not looked up again."""
    @property
    def fitted_to(self) -> bool:
        """Numbers of the shipped file were fitted to it."""
    @property
    def remark(self) -> str:
        """For instance why the shipped file misses it; or empty."""

class EvidenceRow(_Compiled):
    """One measured number, computed as well."""

    @property
    def steel(self) -> str:
        """On which it was measured."""
    @property
    def record(self) -> str:
        """Its name in the file of measurements."""
    @property
    def source(self) -> str:
        """Citation."""
    @property
    def confidence(self) -> str:
        """'high', 'medium' or 'low'; empty of one of your own."""
    @property
    def remark(self) -> str:
        """Why the shipped file misses it; or empty."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Of that steel."""
    @property
    def kelvin(self) -> float:
        """Soak [K]."""
    @property
    def celsius(self) -> float:
        """Soak [C]."""
    @property
    def fahrenheit(self) -> float:
        """Soak [F]."""
    @property
    def distance(self) -> float:
        """Eq. (V1)."""
    @property
    def distance_by(self) -> str:
        """What it is largest in: an element or 'temperature'."""
    @property
    def phases(self) -> list[str] | None:
        """The only ones that may form; None: all."""
    @property
    def by_hardening(self) -> bool:
        """Martensite start, retained austenite or hardness."""
    @property
    def quantity(self) -> str:
        """What was measured."""
    @property
    def unit(self) -> str:
        """Of value, uncertainty and computed."""
    @property
    def value(self) -> float:
        """Measured."""
    @property
    def uncertainty(self) -> float:
        """Published."""
    @property
    def computed(self) -> float:
        """By the long-hold limit; NaN: see reason."""
    @property
    def miss(self) -> float:
        """(computed - value) / uncertainty."""
    @property
    def met(self) -> bool:
        """Missed by one uncertainty or less."""
    @property
    def from_memory(self) -> bool:
        """Quoted from memory."""
    @property
    def fitted_to(self) -> bool:
        """Numbers of the shipped file were fitted to it."""
    @property
    def reason(self) -> str:
        """Why it was not computed; or empty."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Evidence(_Compiled):
    """Measurements of the steels most like one, and what is computed for them."""

    @property
    def steel(self) -> str:
        """Its name."""
    @property
    def analysis(self) -> MillAnalysis:
        """Its certificate."""
    @property
    def parameters(self) -> str:
        """Title of the set."""
    @property
    def kelvin(self) -> float:
        """[K]"""
    @property
    def celsius(self) -> float:
        """[C]"""
    @property
    def fahrenheit(self) -> float:
        """[F]"""
    @property
    def measurements(self) -> int:
        """How many were looked through."""
    @property
    def rows(self) -> list[EvidenceRow]:
        """Nearest first."""
    @property
    def nearest(self) -> float:
        """Distance of the nearest, Eq. (V1): up to 1 a steel of this kind, up to 3 a
        related one."""
    @property
    def computed(self) -> int:
        """Rows with a number."""
    @property
    def met(self) -> int:
        """Of these, within the published uncertainty."""
    def __len__(self) -> int: ...
    def to_frame(self) -> pd.DataFrame: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def published_measurements() -> list[RecordedMeasurement]: ...

def own_measurement(measurement: Measurement) -> RecordedMeasurement: ...

def load_measurements(file: str) -> list[RecordedMeasurement]: ...

def evidence(
    steel: CompiledSteel,
    kelvin: float,
    most_soaks: int,
    measurements: list[RecordedMeasurement] | None,
    unit: str,
) -> Evidence: ...

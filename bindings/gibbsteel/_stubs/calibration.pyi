"""bind_calibration.cpp; see ../_core.pyi."""

import os
from collections.abc import Callable, Sequence

import pandas as pd

from .calibration_parts import (
    CalibratedNumber,
    LeftOutSteel,
    Measurement,
    PublishedCheck,
    SeenDirection,
)
from .compiled import _Array, _Compiled
from .measurement_outcome import MeasurementOutcome
from .parameters import ParameterSet

class Calibration(_Compiled):
    """Numbers of a parameter file fitted to measurements."""

    def _repr_html_(self) -> str: ...
    @property
    def status(self) -> str:
        """"converged", "stalled", "not converged", "nothing usable", "cancelled" or
        "compared"."""
    @property
    def reason(self) -> str:
        """In one sentence, unless converged."""
    @property
    def loss(self) -> str: ...
    @property
    def loss_scale(self) -> float:
        """In uncertainties."""
    @property
    def numbers(self) -> list[CalibratedNumber]:
        """As asked for."""
    @property
    def measurements(self) -> list[MeasurementOutcome]:
        """As given."""
    @property
    def covariance(self) -> _Array:
        """Array (numbers, numbers), in their units; empty without a fit."""
    @property
    def directions(self) -> list[SeenDirection]:
        """Best seen first."""
    @property
    def steels(self) -> list[LeftOutSteel]:
        """Cross-validation."""
    @property
    def published(self) -> PublishedCheck:
        """Published measurements met before and after."""
    @property
    def misfit_before(self) -> float:
        """Eq. (K1) with the file."""
    @property
    def misfit_after(self) -> float: ...
    @property
    def rounds(self) -> int:
        """Of reweighting."""
    @property
    def evaluations(self) -> int:
        """Of all soaks, in the fit."""
    @property
    def layer(self) -> str:
        """A parameter file; empty when there is none."""
    @property
    def remarks(self) -> list[str]:
        """On what the layer cannot hold."""
    @property
    def parameters(self) -> ParameterSet | None:
        """The file with the layer on it."""
    @property
    def below(self) -> str:
        """Title of the file calibrated."""
    @property
    def usable(self) -> bool:
        """There is a layer."""
    def rms_before(self, held_back: bool = False) -> float:
        """Root mean square of the misses, in uncertainties."""
    def rms_after(self, held_back: bool = False) -> float:
        """Root mean square of the misses, in uncertainties."""
    def save_layer(self, path: str | os.PathLike[str]) -> None: ...
    def to_frame(self) -> pd.DataFrame: ...
    def numbers_to_frame(self) -> pd.DataFrame: ...

def calibrate(
    measurements: Sequence[Measurement],
    numbers: Sequence[tuple[str, float]],
    on: ParameterSet | None,
    *,
    loss: str = "huber",
    loss_scale: float = 0.0,
    cross_validate: bool = True,
    check_published: bool = True,
    most_evaluations: int = 200,
    threads: int = 0,
    progress: Callable[[int], object] | None = None,
    file_name: str = "calibration.json",
    title: str = "Calibrated numbers",
    edition: str = "1",
    licence: str = "CC0-1.0",
    start: dict[str, float] = {},
) -> Calibration:
    """See gibbsteel.calibrate."""
def stated_numbers(parameters: ParameterSet) -> list[tuple[str, float]]:
    """(place, 0) of each number whose standard deviation the set states."""

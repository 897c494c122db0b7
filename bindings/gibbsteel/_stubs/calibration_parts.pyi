"""bind_calibration_parts.cpp; see ../_core.pyi."""

from .compiled import _Compiled
from .quantity import Quantity
from .steel import SoakOptions

class Measurement(_Compiled):
    """One measured number of a soaked steel."""

    def __init__(
        self,
        steel: str,
        weight_percent: dict[str, float],
        kelvin: float,
        quantity: Quantity,
        value: float,
        uncertainty: float,
        record: str = "",
        held_back: bool = False,
        *,
        soak: SoakOptions,
    ) -> None: ...
    @property
    def steel(self) -> str:
        """Its name."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Of the steel."""
    @property
    def celsius(self) -> float:
        """[C]"""
    @property
    def quantity(self) -> Quantity:
        """What was measured."""
    @property
    def value(self) -> float:
        """In the unit of the quantity."""
    @property
    def uncertainty(self) -> float:
        """One standard deviation, in the unit of the quantity."""
    @property
    def record(self) -> str:
        """Where it is published; may be empty."""
    @property
    def held_back(self) -> bool:
        """Only compared with, not fitted to."""

class CalibratedNumber(_Compiled):
    """A number of the parameter file before and after a calibration."""

    @property
    def place(self) -> str:
        """Place in the file."""
    @property
    def unit(self) -> str: ...
    @property
    def text(self) -> str:
        """What it is."""
    @property
    def before(self) -> float:
        """In the file."""
    @property
    def after(self) -> float: ...
    @property
    def prior_deviation(self) -> float: ...
    @property
    def deviation(self) -> float:
        """Standard deviation after the fit, Eq. (K4)."""
    @property
    def ratio(self) -> float:
        """Standard deviation over that of the prior."""
    @property
    def seen(self) -> bool:
        """False: the data say next to nothing about it."""
    def __eq__(self, other: object) -> bool: ...

class SeenDirection(_Compiled):
    """A combination of the numbers and how well the data see it, Eq. (K5)."""

    @property
    def singular_value(self) -> float: ...
    @property
    def ratio(self) -> float:
        """Standard deviation over that of the prior."""
    @property
    def along(self) -> list[float]:
        """Of each number, in prior standard deviations."""
    def __eq__(self, other: object) -> bool: ...

class LeftOutSteel(_Compiled):
    """Root mean squares of the misses of one steel, in uncertainties."""

    @property
    def steel(self) -> str: ...
    @property
    def count(self) -> int:
        """Measurements that count."""
    @property
    def before(self) -> float: ...
    @property
    def fitted(self) -> float:
        """With the steel in the fit."""
    @property
    def predicted(self) -> float:
        """By the fit without it."""
    @property
    def status(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...

class PublishedCheck(_Compiled):
    """What a calibration does to the published measurements."""

    @property
    def count(self) -> int:
        """Computed before and after."""
    @property
    def met_before(self) -> int:
        """Missed by one published uncertainty or less, with the file."""
    @property
    def met_after(self) -> int:
        """The same with the layer."""
    @property
    def fitted_to(self) -> int:
        """Of them, those that the calibration was fitted to."""
    @property
    def others(self) -> int:
        """The others: a test."""
    @property
    def others_met_before(self) -> int: ...
    @property
    def others_met_after(self) -> int: ...
    @property
    def worse(self) -> bool:
        """Fewer are met than before, of the others; of all where there are none."""
    def __eq__(self, other: object) -> bool: ...

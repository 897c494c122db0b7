"""bind_measurement_outcome.cpp; see ../_core.pyi."""

from .compiled import _Compiled

class MeasurementOutcome(_Compiled):
    """A measurement before and after a calibration."""

    @property
    def steel(self) -> str: ...
    @property
    def record(self) -> str: ...
    @property
    def quantity(self) -> str:
        """Name of the quantity."""
    @property
    def unit(self) -> str: ...
    @property
    def celsius(self) -> float:
        """[C]"""
    @property
    def value(self) -> float:
        """Measured."""
    @property
    def uncertainty(self) -> float: ...
    @property
    def held_back(self) -> bool: ...
    @property
    def before(self) -> float:
        """Computed with the file; NaN where it cannot be."""
    @property
    def after(self) -> float:
        """Computed with the layer."""
    @property
    def residual_before(self) -> float:
        """(computed - measured) / uncertainty."""
    @property
    def residual_after(self) -> float: ...
    @property
    def residual_left_out(self) -> float:
        """By a fit without this steel."""
    @property
    def weight(self) -> float:
        """Of the last round; 0: not fitted to."""
    @property
    def left_out(self) -> int:
        """Evaluations of the fit in which it was left out."""
    @property
    def reason(self) -> str:
        """Of the last of them."""
    def __eq__(self, other: object) -> bool: ...

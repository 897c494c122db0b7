"""bind_tolerance_parts.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Compiled

class TolerancedInput(_Compiled):
    """One thing that scatters: an element, the furnace or segregation."""

    @property
    def name(self) -> str:
        """An element, "temperature", "segregation" or a place in the parameter file."""
    @property
    def unit(self) -> str:
        """Unit of the numbers."""
    @property
    def nominal(self) -> float:
        """Of the steel, or as asked for."""
    @property
    def low(self) -> float:
        """End of the box: limit or two deviations."""
    @property
    def high(self) -> float:
        """End of the box: limit or two deviations."""
    @property
    def given_deviation(self) -> float:
        """Of the normal distribution given; 0 for a range."""
    @property
    def mean(self) -> float:
        """Of the distribution."""
    @property
    def standard_deviation(self) -> float:
        """Of the distribution."""
    @property
    def text(self) -> str:
        """What a number of the parameter file is, in words; else empty."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Contribution(_Compiled):
    """How much one input matters for one quantity."""

    @property
    def input(self) -> str:
        """Name of the input."""
    @property
    def slope(self) -> float:
        """Derivative; NaN when unknown."""
    @property
    def scatter(self) -> float:
        """Scatter that the input causes alone."""
    @property
    def share(self) -> float:
        """Of the first-order variance, 0 to 1."""
    @property
    def sampled_share(self) -> float:
        """Squared correlation over the samples, 0 to 1."""

class FirstOrderBand(_Compiled):
    """From the derivatives. NaN where unknown."""

    @property
    def mean(self) -> float: ...
    @property
    def standard_deviation(self) -> float: ...
    @property
    def lowest(self) -> float:
        """Over the box, if all were linear."""
    @property
    def highest(self) -> float:
        """Over the box, if all were linear."""
    @property
    def one_sided(self) -> bool:
        """True: a phase change is close by."""
    @property
    def remark(self) -> str:
        """Why one-sided or unknown; else empty."""

class SampledBand(_Compiled):
    """From the samples. NaN without any."""

    @property
    def count(self) -> int:
        """Samples that have this number."""
    @property
    def mean(self) -> float: ...
    @property
    def standard_deviation(self) -> float: ...
    @property
    def lowest(self) -> float:
        """Of the samples, not a bound."""
    @property
    def highest(self) -> float:
        """Of the samples, not a bound."""
    @property
    def percentiles(self) -> list[float]:
        """As ToleranceBand.percentiles."""

class WorstCorner(_Compiled):
    """Worst corner of the box that was found: a search, not a proof."""

    @property
    def value(self) -> float:
        """NaN when not searched."""
    @property
    def inputs(self) -> list[float]:
        """As ToleranceBand.inputs."""

class QuantityBand(_Compiled):
    """The band of one quantity."""

    @property
    def name(self) -> str: ...
    @property
    def unit(self) -> str: ...
    @property
    def label(self) -> str:
        """Name with the unit."""
    @property
    def nominal(self) -> float:
        """Of the nominal state."""
    @property
    def first_order(self) -> FirstOrderBand: ...
    @property
    def sampled(self) -> SampledBand: ...
    @property
    def lowest_corner(self) -> WorstCorner: ...
    @property
    def highest_corner(self) -> WorstCorner: ...
    @property
    def contributions(self) -> list[Contribution]:
        """As ToleranceBand.inputs."""

class PhaseShare(_Compiled):
    """How often a kind of phase is there."""

    @property
    def kind(self) -> str: ...
    @property
    def nominal(self) -> bool:
        """Present in the nominal state."""
    @property
    def share(self) -> float:
        """Of the usable samples, 0 to 1."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class UnusableSample(_Compiled):
    """A sample or corner that gave no result."""

    @property
    def inputs(self) -> list[float]:
        """As ToleranceBand.inputs."""
    @property
    def reason(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

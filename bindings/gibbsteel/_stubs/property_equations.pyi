"""bind_property_equations.cpp; see ../_core.pyi."""

from collections.abc import Callable, Sequence

from .compiled import _Compiled

class PropertyInput(_Compiled):
    """What an equation may read; each kind reads its own part."""

    def __init__(
        self,
        weight_percent: dict[str, float],
        *,
        martensite_start: float = ...,
        coldest_celsius: float = 20.0,
        cooling_rate: float = 36000.0,
        particle_diameter: float = ...,
        carbide_fraction: float = 0.0,
    ) -> None: ...
    @property
    def weight_percent(self) -> dict[str, float]:
        """Of the austenite."""
    @property
    def martensite_start(self) -> float:
        """[C], for retained austenite."""
    @property
    def coldest_celsius(self) -> float:
        """Coldest temperature of the quench [C]."""
    @property
    def cooling_rate(self) -> float:
        """At 700 C [C/h], for martensite hardness."""
    @property
    def particle_diameter(self) -> float:
        """Mean of the carbide [um], for grain pinning."""
    @property
    def carbide_fraction(self) -> float:
        """Of the volume, 0 to 1, for grain pinning."""

class PropertySlope(_Compiled):
    """Derivatives of an equation with respect to what it reads."""

    @property
    def weight_percent(self) -> dict[str, float]:
        """Per wt%; elements that do not matter left out."""
    @property
    def martensite_start(self) -> float:
        """Per C."""
    @property
    def carbide_fraction(self) -> float:
        """Per unit of the fraction."""

class PropertyEquation(_Compiled):
    """One equation of the trade."""

    @property
    def kind(self) -> str:
        """``"martensite start"``, ``"retained austenite"``, ..."""
    @property
    def unit(self) -> str:
        """Of what it gives: ``"C"``, ``""`` (a fraction), ``"HV"``, ``"um"``."""
    @property
    def key(self) -> str:
        """By which it is chosen."""
    @property
    def label(self) -> str:
        """``"H7"``; empty for your own."""
    @property
    def formula(self) -> str:
        """As text, weight percents of the austenite."""
    @property
    def source(self) -> str:
        """Citation."""
    @property
    def ranges(self) -> dict[str, tuple[float, float]]:
        """Element -> (low, high) [wt%] within which the source says it holds."""
    @property
    def elements(self) -> list[str]:
        """That it has a term for; empty when not known."""
    @property
    def error(self) -> float:
        """Typical, one standard deviation, in the unit."""
    @property
    def note(self) -> str:
        """What to know when using it."""
    def value(self, input: PropertyInput) -> float:
        """What it gives."""
    def slope_at(self, input: PropertyInput) -> PropertySlope:
        """Its derivatives."""

class PropertyEquations(_Compiled):
    """The equations to choose from; never changes."""

    def __init__(self) -> None: ...
    @property
    def all(self) -> list[PropertyEquation]:
        """The built-in ones, then your own."""
    def keys(self, kind: str) -> list[str]:
        """Keys of one kind."""
    def at(self, kind: str, key: str) -> PropertyEquation:
        """By kind and key."""
    def with_equation(
        self,
        kind: str,
        key: str,
        value: Callable[[PropertyInput], float],
        *,
        formula: str = "",
        source: str = "",
        ranges: dict[str, tuple[float, float]] = {},
        elements: Sequence[str] = [],
        error: float = 0.0,
        note: str = "",
    ) -> PropertyEquations:
        """These and one more; `value` is called with a PropertyInput."""
    def __len__(self) -> int: ...

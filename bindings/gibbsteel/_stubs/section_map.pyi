"""bind_section_map.cpp; see ../_core.pyi."""

from collections.abc import Callable

import pandas as pd

from .analysis import MillAnalysis
from .compiled import _Compiled
from .section_parts import (
    SectionAxis,
    SectionBoundary,
    SectionField,
    SectionGap,
    SectionNode,
)
from .state import SoakWarning
from .steel import CompiledSteel, SoakOptions

class SectionOptions(_Compiled):
    """Settings of a section map."""

    def __init__(
        self,
        *,
        temperature_tolerance: float = 0.1,
        percent_tolerance: float = 0.001,
        columns: int = 12,
        rows: int = 12,
        most_soaks: int = 200000,
        threads: int = 0,
    ) -> None: ...
    @property
    def temperature_tolerance(self) -> float:
        """What a boundary may be off [K]."""
    @property
    def percent_tolerance(self) -> float:
        """What a boundary may be off [wt%]."""
    @property
    def columns(self) -> int:
        """Of the mesh at the start."""
    @property
    def rows(self) -> int:
        """Of the mesh at the start."""
    @property
    def most_soaks(self) -> int:
        """The search stops there and says so."""
    @property
    def threads(self) -> int:
        """0: all cores."""

class SectionMap(_Compiled):
    """Which phases are stable where."""

    def _repr_html_(self) -> str: ...
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def analysis(self) -> MillAnalysis:
        """Of the steel that the axes change."""
    @property
    def x(self) -> SectionAxis:
        """The axis to the right."""
    @property
    def y(self) -> SectionAxis:
        """The axis upwards."""
    @property
    def celsius(self) -> float | None:
        """Temperature of a map over two elements [C]; else None."""
    @property
    def x_tolerance(self) -> float:
        """[unit of x]"""
    @property
    def y_tolerance(self) -> float:
        """[unit of y]"""
    @property
    def boundaries(self) -> list[SectionBoundary]: ...
    @property
    def fields(self) -> list[SectionField]:
        """Largest first."""
    @property
    def nodes(self) -> list[SectionNode]:
        """Points where boundaries meet."""
    @property
    def gaps(self) -> list[SectionGap]:
        """Regions of which nothing is known."""
    @property
    def warnings(self) -> list[SoakWarning]: ...
    @property
    def parameters(self) -> str:
        """Title and edition of the parameter file."""
    @property
    def parameters_hash(self) -> str:
        """ParameterSet.content_hash of the parameter file."""
    @property
    def soaks(self) -> int:
        """Soaks that the search took."""
    @property
    def stopped(self) -> str:
        """Why it is not complete; else empty."""
    @property
    def complete(self) -> bool:
        """True when nothing in the map is unknown."""
    def field_at(self, x: float, y: float) -> SectionField | None:
        """The field that holds a point, or None."""
    def to_frame(self) -> pd.DataFrame:
        """Points of all boundaries; see gibbsteel.section_frames.section_to_frame."""

def section_over_temperature(
    steel: CompiledSteel,
    element: str,
    percent: tuple[float, float],
    kelvin: tuple[float, float],
    soak: SoakOptions,
    options: SectionOptions,
    progress: Callable[[int], object] | None,
) -> SectionMap:
    """Temperature against one element."""

def section_over_elements(
    steel: CompiledSteel,
    first: str,
    first_percent: tuple[float, float],
    second: str,
    second_percent: tuple[float, float],
    kelvin: float,
    soak: SoakOptions,
    options: SectionOptions,
    progress: Callable[[int], object] | None,
) -> SectionMap:
    """Two elements at one temperature."""

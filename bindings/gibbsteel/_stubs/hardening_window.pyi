"""bind_hardening_window.cpp; see ../_core.pyi."""

from collections.abc import Callable
from typing import ClassVar

import pandas as pd

from .analysis import MillAnalysis
from .compiled import _Compiled
from .quantity import Quantity
from .search_options import PhaseGap, SearchOptions
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions

class WindowRules(_Compiled):
    """Rules of a hardening window."""

    def __init__(
        self,
        *,
        no_ferrite: bool,
        hardness: Quantity | None,
        least_hardness: float | None,
        pinning_kind: str,
        least_pinning_volume_percent: float | None,
        solidus_margin: float = 30.0,
    ) -> None: ...

class WindowSpan(_Compiled):
    """Where one rule holds, or all of them."""

    @property
    def kelvin(self) -> tuple[float, float]:
        """(low, high) [K]."""
    @property
    def celsius(self) -> tuple[float, float]:
        """(low, high) [C]."""
    @property
    def fahrenheit(self) -> tuple[float, float]:
        """(low, high) [F]."""
    @property
    def floor_rule(self) -> str:
        """What sets the low end."""
    @property
    def ceiling_rule(self) -> str:
        """What sets the high end."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class RuleSpans(_Compiled):
    """One rule, and where it holds."""

    @property
    def rule(self) -> str:
        """One of the words of `HardeningWindow.floor_rule`."""
    @property
    def text(self) -> str:
        """The rule in words."""
    @property
    def spans(self) -> list[WindowSpan]:
        """Upwards."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class HardeningWindow(_Compiled):
    """Between which temperatures a steel can be hardened."""

    def _repr_html_(self) -> str: ...
    @property
    def kelvin(self) -> tuple[float | None, float | None] | None:
        """(floor, ceiling) of the lowest window [K]; None when there is none.

        An end that no rule sets is None.
        """
    @property
    def celsius(self) -> tuple[float | None, float | None] | None:
        """(floor, ceiling) of the lowest window [C]; None when there is none.

        An end that no rule sets is None.
        """
    @property
    def fahrenheit(self) -> tuple[float | None, float | None] | None:
        """(floor, ceiling) of the lowest window [F]; None when there is none.

        An end that no rule sets is None.
        """
    @property
    def searched_kelvin(self) -> tuple[float, float]:
        """(low, high) of the range that was searched [K]."""
    @property
    def searched_celsius(self) -> tuple[float, float]:
        """(low, high) of the range that was searched [C]."""
    @property
    def searched_fahrenheit(self) -> tuple[float, float]:
        """(low, high) of the range that was searched [F]."""
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def status(self) -> str:
        """``"found"``, ``"no window"`` or ``"not known"``."""
    @property
    def floor_rule(self) -> str:
        """What sets the floor.

        ``"range"``, ``"ferrite"``, ``"hardness"``, ``"pinning"``, ``"solidus"``,
        ``"melting"``, ``"left out"`` (possible melt of what is not modelled) or
        ``"unknown"``.
        """
    @property
    def ceiling_rule(self) -> str:
        """What sets the ceiling; one of the words of `floor_rule`."""
    @property
    def spans(self) -> list[WindowSpan]:
        """All windows, upwards."""
    @property
    def rules(self) -> list[RuleSpans]:
        """Every rule, and where it holds."""
    @property
    def at_floor(self) -> State:
        """The soak there, or at the low end of the search.

        Not usable when there is no window.
        """
    @property
    def at_ceiling(self) -> State:
        """The soak there, or at the high end of the search.

        Not usable when there is no window.
        """
    @property
    def gaps(self) -> list[PhaseGap]:
        """What is not known and left out."""
    @property
    def remarks(self) -> list[str]:
        """What is left out, and what no rule looks at."""
    @property
    def text(self) -> str:
        """The answer, or why there is none."""
    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate."""
    @property
    def parameters(self) -> str:
        """Title and edition of the parameter file."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """Of the soaks at both ends."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per rule and stretch."""

def hardening_window(
    steel: CompiledSteel,
    rules: WindowRules,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> HardeningWindow: ...

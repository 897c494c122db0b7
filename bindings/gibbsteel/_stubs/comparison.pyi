"""bind_comparison.cpp; see ../_core.pyi."""

import os
from collections.abc import Sequence
from typing import ClassVar

import pandas as pd

from .compiled import _Compiled
from .quantity import Quantity
from .state import SoakWarning, State

class ComparisonRow(_Compiled):
    """One number of every state that is compared."""

    @property
    def name(self) -> str:
        """For instance ``"C in the matrix"``."""
    @property
    def unit(self) -> str:
        """Such as ``"wt%"``; empty for a pure number."""
    @property
    def label(self) -> str:
        """Name with the unit."""
    @property
    def values(self) -> list[float]:
        """One per state; NaN where the state is not usable."""
    @property
    def low(self) -> list[float]:
        """Low end of the band, one per state; empty for what has none."""
    @property
    def high(self) -> list[float]:
        """High end of the band, one per state; empty for what has none."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Comparison(_Compiled):
    """Steels, or soaks of one, side by side."""

    def _repr_html_(self) -> str: ...
    @property
    def states(self) -> list[State]:
        """In the order given."""
    @property
    def rows(self) -> list[ComparisonRow]:
        """Carbides, matrix, carbon activity, quantities that were asked for."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct ones of all states, and of hardening estimates in rows."""
    def warnings_of(self, i: int) -> list[SoakWarning]:
        """Those that bear on one state, by its number."""
    def to_frame(self) -> pd.DataFrame:
        """One row per state (pandas)."""
    def to_csv(self, path: str | os.PathLike[str]) -> None:
        """The same as a file."""
    def __getitem__(self, name: str) -> ComparisonRow: ...
    def __len__(self) -> int: ...

def compare(
    states: Sequence[State], quantities: Sequence[Quantity], temperature_unit: str
) -> Comparison:
    """See gibbsteel.compare."""

"""bind_sweep.cpp; see ../_core.pyi."""

import os
from collections.abc import Iterator
from typing import Any, SupportsIndex, overload

import pandas as pd

from .compiled import _Array, _Compiled
from .report import Report
from .state import SoakWarning, State

class Sweep(_Compiled):
    """Many soaks of one steel, in the order asked for."""

    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def states(self) -> list[State]:
        """One per temperature."""
    @property
    def cancelled(self) -> bool:
        """True: stopped early; `states` is the part that is done."""
    @property
    def carbide_kinds(self) -> list[str]:
        """Kinds of carbide that occur anywhere in the sweep."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of all states."""
    @property
    def failures(self) -> int:
        """Number of states that are not usable."""
    def _view(self, member: str) -> _Array | None:
        """A number of every state without a copy; None for another name."""
    def __iter__(self) -> Iterator[State]: ...
    def __len__(self) -> int: ...
    @overload
    def __getitem__(self, i: SupportsIndex) -> State: ...
    @overload
    def __getitem__(self, i: slice) -> Sweep:
        """The sweep of a part of the temperatures."""
    # The next ones are added by display.py; documented where they are written.
    def array(self, name: str) -> _Array: ...
    def report(self, **quench: Any) -> Report: ...
    def to_csv(self, path: str | os.PathLike[str], *, wide: bool = False) -> None: ...
    def to_frame(self, *, wide: bool = False) -> pd.DataFrame: ...
    def to_json(self, path: str | os.PathLike[str]) -> None: ...
    def to_xarray(self) -> Any: ...
    def warn(self) -> None: ...
    def _repr_html_(self) -> str: ...

"""bind_soak_grid.cpp; see ../_core.pyi."""

from collections.abc import Callable, Sequence
from typing import Any, ClassVar, overload

import pandas as pd

from .analysis import MillAnalysis
from .compiled import _Array, _Compiled
from .quantity import Quantity
from .state import SoakWarning, State
from .steel import CompiledSteel, SoakOptions

class SweptVariable(_Compiled):
    """What a grid sweeps: the temperature, or the weight percent of an element."""

    def __init__(self, *, element: str, weight_percent: Sequence[float]) -> None: ...
    @staticmethod
    def _temperature(kelvin: Sequence[float]) -> SweptVariable: ...
    @property
    def name(self) -> str:
        """``"temperature"``, or the symbol of an element."""
    @property
    def unit(self) -> str:
        """``"C"`` (degrees Celsius) or ``"wt%"``."""
    @property
    def values(self) -> _Array:
        """In the order given [unit]."""
    @property
    def label(self) -> str:
        """``"temperature [C]"``, ``"C in the steel [wt%]"``."""
    @property
    def is_temperature(self) -> bool: ...
    def __len__(self) -> int: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SoakGrid(_Compiled):
    """Soaks over two swept variables."""

    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def analysis(self) -> MillAnalysis:
        """Of the steel that the grid was made from."""
    @property
    def first(self) -> SweptVariable:
        """The swept variable of the rows."""
    @property
    def second(self) -> SweptVariable:
        """The swept variable of the columns."""
    @property
    def celsius(self) -> float | None:
        """Soak temperature [C]; None where it is swept."""
    @property
    def parameters(self) -> str:
        """Title and edition of the parameter file."""
    @property
    def parameters_hash(self) -> str:
        """ParameterSet.content_hash of the parameter file."""
    @property
    def shape(self) -> tuple[int, int]:
        """Rows, columns."""
    @property
    def states(self) -> list[State | None]:
        """Row by row; None where the work was stopped before."""
    @property
    def cancelled(self) -> bool:
        """True: stopped early, some cells are None."""
    @property
    def not_done(self) -> int:
        """Number of cells that are None."""
    @property
    def failures(self) -> int:
        """Number of soaks that are not usable."""
    @property
    def carbide_kinds(self) -> list[str]:
        """Kinds of carbide that occur anywhere in the grid."""
    def warnings_of(self, quantity: Quantity) -> list[SoakWarning]:
        """The distinct ones of the soaks, and those of the quantity itself."""
    def array(self, quantity: Quantity) -> _Array:
        """Values of a quantity, shape `shape`; NaN where not done or not usable."""
    @overload
    def __getitem__(self, cell: tuple[int, int]) -> State | None: ...
    @overload
    def __getitem__(self, row: int) -> list[State | None]: ...
    def __len__(self) -> int: ...
    def to_frame(self, *, wide: bool = True) -> pd.DataFrame:
        """Table, one row per cell, or per cell and phase when not `wide`; see
        gibbsteel.grid_frames.grid_to_frame."""
    def to_xarray(self) -> Any:
        """Dataset (xarray); see gibbsteel.grid_frames.grid_to_xarray."""

def soak_grid(
    steel: CompiledSteel,
    first: SweptVariable,
    second: SweptVariable,
    kelvin: float | None,
    options: SoakOptions,
    progress: Callable[[int], object] | None,
) -> SoakGrid:
    """Soaks at every pair of values."""

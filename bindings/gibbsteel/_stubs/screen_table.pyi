"""bind_screen_table.cpp; see ../_core.pyi."""

from collections.abc import Sequence
from typing import Any, ClassVar

import numpy as np
import numpy.typing as npt
import pandas as pd

from .compiled import _Array, _Compiled
from .state import SoakWarning

class ScreenTable(_Compiled):
    """Rows of a screen: numbers side by side. NaN where there is none."""

    status_names: ClassVar[tuple[str, ...]]
    certificate_names: ClassVar[tuple[str, ...]]
    @property
    def status(self) -> npt.NDArray[np.int8]:
        """Shape (rows,): a number of `status_names`."""
    @property
    def certificate(self) -> npt.NDArray[np.int32]:
        """Shape (rows,): a number of `certificate_names`."""
    @property
    def warnings(self) -> npt.NDArray[np.int32]:
        """Shape (rows,): how many the state of the row carries."""
    @property
    def warning_bits(self) -> npt.NDArray[np.uint64]:
        """Shape (rows,): which; bit n stands for gibbsteel.warning.(300 + n)."""
    @property
    def warning_texts(self) -> dict[str, str]:
        """Code -> text in the first row that carries it; others may hold other
        numbers."""
    @property
    def _first_warnings(self) -> list[tuple[str, int, str]]: ...
    @property
    def families(self) -> list[str]:
        """Families of steels of the usable rows, by key, where a quantity is a
        hardening estimate by the family of the steel; else empty."""
    @property
    def _first_of_families(self) -> list[tuple[str, int]]: ...
    @property
    def table_warnings(self) -> list[SoakWarning]:
        """What no row tells alone: that the rows are of several families
        (gibbsteel.warning.357)."""
    def count_warnings(self) -> dict[str, int]:
        """Code of a warning -> number of rows that carry it."""
    @property
    def kelvin(self) -> _Array:
        """Shape (rows,) [K]."""
    @property
    def celsius(self) -> _Array:
        """Shape (rows,) [C]."""
    @property
    def fahrenheit(self) -> _Array:
        """Shape (rows,) [F]."""
    @property
    def steel_weight_percent(self) -> _Array:
        """Shape (rows, steel_elements), the compositions as given [wt%]."""
    @property
    def steel_elements(self) -> list[str]:
        """Columns of the compositions given."""
    @property
    def rows_per_composition(self) -> int:
        """Row r of the screen is composition ``r // this``; 0: not known."""
    @property
    def usable(self) -> npt.NDArray[np.bool_]:
        """Shape (rows,): every number of the row may be used."""
    @property
    def carbide_volume_percent(self) -> _Array:
        """Shape (rows,), all carbides [vol%]."""
    @property
    def carbon_activity(self) -> _Array:
        """Shape (rows,), relative to graphite."""
    @property
    def gibbs_energy(self) -> _Array:
        """Shape (rows,) [J/mol of atoms]."""
    @property
    def volume_percent(self) -> _Array:
        """Shape (rows, kinds) [vol%]; 0 where absent."""
    @property
    def matrix_weight_percent(self) -> _Array:
        """Shape (rows, elements), all matrix phases together [wt%]."""
    @property
    def quantity(self) -> _Array:
        """Shape (rows, quantities), as asked for."""
    @property
    def first_row(self) -> int:
        """Number of the first row within the whole screen."""
    @property
    def rows_asked(self) -> int:
        """Rows that were to be done."""
    @property
    def next_row(self) -> int:
        """First row that is not done: `first_row` to go on."""
    @property
    def cancelled(self) -> bool:
        """True: stopped early, fewer rows than were asked for."""
    @property
    def kinds(self) -> list[str]:
        """All kinds of carbide of the parameter file."""
    @property
    def elements(self) -> list[str]:
        """All elements of the parameter file."""
    @property
    def quantities(self) -> list[str]:
        """Labels of the quantities asked for."""
    @property
    def at_soak_temperature(self) -> bool:
        """Volumes at the soak temperature instead of room temperature."""
    @property
    def parameters(self) -> str:
        """Title and edition of the parameter file."""
    @property
    def parameters_hash(self) -> str:
        """ParameterSet.content_hash of the parameter file."""
    def count(self) -> dict[str, int]:
        """Status name -> number of rows, for those that occur."""
    def to_frame(self, *, absent: bool = False) -> pd.DataFrame:
        """One row per row: what was soaked, numbers, codes of warnings (pandas);
        carbides and elements that are nowhere only when `absent`."""
    @staticmethod
    def _restored(stored: tuple[Any, ...]) -> ScreenTable: ...
    def __len__(self) -> int: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def join_screens(tables: Sequence[ScreenTable]) -> ScreenTable:
    """One table from consecutive ones, at least one."""

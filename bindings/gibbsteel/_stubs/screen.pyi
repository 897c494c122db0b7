"""bind_screen.cpp; see ../_core.pyi."""

from collections.abc import Callable, Sequence

from .compiled import _Array, _Compiled
from .parameters import ParameterSet
from .quantity import Quantity
from .screen_table import ScreenTable
from .steel import SoakOptions

SCREEN_BLOCK_ROWS: int

class ScreenOptions(_Compiled):
    def __init__(
        self,
        soak: SoakOptions,
        parameters: ParameterSet,
        bind_tramp_elements: bool,
        quantities: Sequence[Quantity],
    ) -> None: ...

class ScreenInput(_Compiled):
    def __init__(
        self,
        elements: Sequence[str],
        compositions: _Array,
        kelvin: _Array,
        one_per_composition: bool,
    ) -> None: ...

def run_screen(
    input: ScreenInput,
    options: ScreenOptions,
    first_row: int,
    last_row: int,
    threads: int,
    progress: Callable[[int], object] | None,
) -> tuple[ScreenTable, bool]:
    """Rows of a screen, and whether the caller stopped it."""

"""bind_report.cpp; see ../_core.pyi."""

import os
from typing import ClassVar

from .compiled import _Compiled
from .hardening import HardeningEstimates, HardeningOptions
from .measured_carbide import ShortSoak
from .state import State
from .sweep import Sweep

class ReportSection(_Compiled):
    """Sentences, then a table."""

    @property
    def title(self) -> str:
        """Heading of the section."""
    @property
    def lines(self) -> list[str]:
        """Sentences before the table."""
    @property
    def table(self) -> list[list[str]]:
        """Rows of texts, the column headings first; empty without a table."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Report(_Compiled):
    """One page that can be filed with a heat."""

    @property
    def title(self) -> str:
        """Steel and temperature."""
    @property
    def flag(self) -> str:
        """Empty; otherwise what is not usable or outside validity."""
    @property
    def sections(self) -> list[ReportSection]:
        """In the order of the page."""
    @property
    def warnings(self) -> list[str]:
        """Texts with their codes."""
    @property
    def caution(self) -> str:
        """What to do before hardening real parts."""
    @property
    def text(self) -> str:
        """The page as plain text."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
    # The next ones are added by display.py.
    @property
    def html(self) -> str:
        """The page as HTML."""
    def save(self, path: str | os.PathLike[str]) -> None: ...
    def _repr_html_(self) -> str: ...

def state_report(state: State | ShortSoak, quench: HardeningOptions) -> Report:
    """The page of a state or a short soak."""

def state_title(state: State) -> str:
    """Steel, temperature, and what the numbers are."""

def sweep_report(sweep: Sweep, quench: HardeningOptions) -> Report:
    """The page of a sweep."""

def state_flag(state: State) -> str:
    """Empty; or NOT USABLE or OUTSIDE VALIDITY, and why."""

def sweep_flag(sweep: Sweep) -> str:
    """Empty; or which soaks are not usable or outside validity."""

def provenance(state: State) -> dict[str, str]:
    """What a table needs to be traced to its data."""

def long_hold_provenance(
    parameters: str, parameters_hash: str, at_soak_temperature: bool | None
) -> dict[str, str]:
    """The same of a result of long holds that keeps no state."""

def estimates_provenance(estimates: HardeningEstimates) -> dict[str, str]:
    """The same of hardening estimates."""

"""bind_state.cpp; see ../_core.pyi."""

import os
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, ClassVar, Literal

import pandas as pd

from .analysis import MillAnalysis
from .compiled import _Compiled
from .errors import Problem
from .hardening import HardeningEstimates
from .measured_carbide import MeasuredCarbide, ShortSoak
from .occurrence import Occurrence
from .parameters import ParameterSet
from .property_equations import PropertyEquations
from .report import Report
from .solve import SolveReport
from .timed_soak import MinutesFor

def element_problem(
    place: str, name: str, present: Sequence[str], way_out: str
) -> Problem:
    """Why a dict by element does not hold the name."""

class SoakWarning(_Compiled):
    """What to know about a result; no error."""

    @property
    def code(self) -> str:
        """Stable code."""
    @property
    def text(self) -> str:
        """One or two sentences."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Matrix(_Compiled):
    """All matrix phases of a state together."""

    @property
    def mass_percent(self) -> float:
        """Percent of the mass."""
    @property
    def volume_percent(self) -> float:
        """Percent of the volume."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Mass-weighted composition [weight percent]."""
    @property
    def atom_fraction(self) -> dict[str, float]:
        """Composition, sum 1."""
    def _repr_html_(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class State(_Compiled):
    """Long-hold limit (true equilibrium) of one steel at one temperature."""

    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate, sorted into modelled and not modelled."""
    @property
    def kelvin(self) -> float:
        """Temperature [K]."""
    @property
    def celsius(self) -> float:
        """Temperature [C]."""
    @property
    def fahrenheit(self) -> float:
        """Temperature [F]."""
    @property
    def at_soak_temperature(self) -> bool:
        """False: volumes at room temperature, as metallography measures."""
    @property
    def usable(self) -> bool:
        """True when the calculation converged and was checked.

        It does not say that the parameter file is right here: read `warnings`.
        When False, every number is NaN or missing.
        """
    @property
    def occurrences(self) -> list[Occurrence]:
        """All, largest volume first."""
    @property
    def carbides(self) -> dict[str, Occurrence]:
        """Name -> Occurrence, largest volume first."""
    @property
    def matrix_phases(self) -> dict[str, Occurrence]:
        """Name -> Occurrence."""
    @property
    def matrix(self) -> Matrix:
        """All matrix phases together."""
    @property
    def carbide_volume_percent(self) -> float:
        """Percent of the volume, all carbides together."""
    @property
    def carbide_mass_percent(self) -> float:
        """Percent of the mass, all carbides together."""
    @property
    def carbon_activity(self) -> float:
        """Relative to graphite; NaN without carbon."""
    @property
    def gibbs_energy(self) -> float:
        """[J/mol of atoms]"""
    @property
    def density(self) -> float:
        """[g/cm3]"""
    @property
    def chemical_potential(self) -> dict[str, float]:
        """Element -> [J/mol]; see ParameterSet.reference_state."""
    @property
    def driving_force(self) -> dict[str, float]:
        """Kind -> [J/mol of atoms]; 0 present, negative absent."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """What to know about this result."""
    @property
    def solve_report(self) -> SolveReport:
        """How the minimization went."""
    @property
    def parameters(self) -> str:
        """Title and edition of the parameter file."""
    @property
    def parameters_hash(self) -> str:
        """ParameterSet.content_hash of the parameter file."""
    @property
    def kinds(self) -> list[str]:
        """Names of all kinds of phase that the parameter file knows."""
    @property
    def soak_minutes(self) -> float | None:
        """Minutes at temperature of a timed soak, else None."""
    @property
    def particle_micrometres(self) -> float | None:
        """Diameter of the annealed cementite of a timed soak, else None."""
    @property
    def suppressed(self) -> list[str]:
        """Phase models of the file that were not allowed to form."""
    def volume_percent_of(self, kind: str) -> float:
        """Volume percent of all occurrences of a kind; 0 when absent.

        Raises InputError for a kind that the parameter file does not know.
        """
    def element_shares(self, element: str) -> dict[str, float]:
        """Where the atoms of an element are, in percent of that element.

        ``"matrix"`` first, then every other kind present, largest first; sum 100.
        Empty when not usable; raises InputError when the state holds none of it.
        """
    def hardening(
        self,
        *,
        coldest_celsius: Any = None,
        coldest_fahrenheit: Any = None,
        family: str | None = None,
        martensite_start: str | None = None,
        retained_austenite: str | None = None,
        martensite_hardness: str | None = None,
        grain_pinning: str | None = None,
        particle_diameter: float | None = None,
        cooling_rate: float | None = None,
        equations: PropertyEquations | None = None,
    ) -> HardeningEstimates:
        """What a quench from this state gives; see gibbsteel.hardening.hardening."""
    def with_measured_carbide(
        self,
        measured: Mapping[str, float] | Sequence[MeasuredCarbide],
        *,
        composition: Literal["soak", "annealed"] = "soak",
        unlisted: Literal["kept", "absent"] = "kept",
        annealed_celsius: Any = None,
        annealed_fahrenheit: Any = None,
        parameters: ParameterSet | None = None,
    ) -> ShortSoak:
        """The short soak that leaves this carbide; see measured_carbide.py."""
    def short_soak_limit(
        self,
        *,
        annealed_celsius: Any = None,
        annealed_fahrenheit: Any = None,
        parameters: ParameterSet | None = None,
    ) -> ShortSoak:
        """What dissolves when only carbon moves; see short_soak_limit.py."""
    def timed_soak(
        self,
        minutes: float,
        *,
        particle_micrometres: float = 0.6,
        annealed_celsius: Any = None,
        annealed_fahrenheit: Any = None,
        parameters: ParameterSet | None = None,
    ) -> ShortSoak:
        """What dissolves in so many minutes; see timed_soak.py."""
    def timed_soaks(
        self,
        minutes: Iterable[float],
        *,
        particle_micrometres: float = 0.6,
        annealed_celsius: Any = None,
        annealed_fahrenheit: Any = None,
        parameters: ParameterSet | None = None,
    ) -> list[ShortSoak]:
        """The same at several times; see timed_soak.py."""
    def minutes_for(
        self,
        element: str,
        weight_percent: float,
        *,
        particle_micrometres: float = 0.6,
        annealed_celsius: Any = None,
        annealed_fahrenheit: Any = None,
        parameters: ParameterSet | None = None,
    ) -> MinutesFor:
        """How long until the matrix holds so much; see timed_soak.py."""
    def __getitem__(self, name: str) -> Occurrence: ...
    def __contains__(self, name: object) -> bool: ...
    # The next ones are added by display.py; documented where they are written.
    def report(self, **quench: Any) -> Report: ...
    def to_csv(self, path: str | os.PathLike[str], *, wide: bool = False) -> None: ...
    def to_frame(self, *, wide: bool = False) -> pd.DataFrame: ...
    def to_json(self, path: str | os.PathLike[str]) -> None: ...
    def warn(self) -> None: ...
    def _repr_html_(self) -> str: ...

"""Types of the compiled module; bindings/bind_*.cpp is the source of each class.

Everything here is read-only. Units and meaning are those of the C++ headers in
include/gibbsteel/. test_types.py compares this file with the built module.
"""

import os
from collections.abc import Callable, Iterator, Sequence
from typing import Any, ClassVar, Never, TypedDict

import numpy as np
import numpy.typing as npt
import pandas as pd

_Array = npt.NDArray[np.float64]

class _CompiledType(type):
    """The metaclass of pybind11."""

class _Compiled(metaclass=_CompiledType):
    """The base class of pybind11; a class without its own constructor has none."""

    def __init__(self, no_constructor: Never, /, *args: Never, **kwargs: Never) -> None:
        """Raises TypeError: results come from functions, not from their class."""

class _PhasePoint(TypedDict):
    """A phase at one composition, as the minimizer lists it."""

    phase: str
    amount: float
    site_fractions: _Array
    driving_force: float

class _BuildInfo(TypedDict):
    """How the module was built."""

    version: str
    compiler: str
    flags: str
    cxx_standard: int
    assertions: bool
    pybind11: str
    parameters: str
    parameters_hash: str

# bind_errors.cpp

class Problem(_Compiled):
    """One thing wrong with a file or an argument."""

    def __init__(self, code: str, place: str, what: str, remedy: str) -> None: ...
    @property
    def code(self) -> str:
        """Stable code, such as ``"gibbsteel.input.203"``."""
    @property
    def place(self) -> str:
        """File and JSON pointer, or argument."""
    @property
    def what(self) -> str:
        """What is wrong."""
    @property
    def remedy(self) -> str:
        """What would be right."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

# bind_analysis.cpp

class BoundCompound(_Compiled):
    """A compound that takes elements out of the calculation."""

    @property
    def name(self) -> str:
        """For instance ``"MnS"``."""
    @property
    def weight_percent(self) -> float:
        """Weight percent of the steel."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class MillAnalysis(_Compiled):
    """The mill certificate, sorted into modelled and not modelled."""

    @property
    def given(self) -> dict[str, float]:
        """As entered [weight percent]."""
    @property
    def modelled(self) -> dict[str, float]:
        """What enters the calculation, Fe (balance) first [weight percent]."""
    @property
    def not_modelled(self) -> dict[str, float]:
        """Known elements that the parameter file does not model [weight percent]."""
    @property
    def bound(self) -> list[BoundCompound]:
        """Compounds of tramp elements; empty unless asked for."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

# bind_occurrence.cpp

class Occurrence(_Compiled):
    """One phase region of a state: all its particles together."""

    @property
    def name(self) -> str:
        """Unique in its state."""
    @property
    def kind(self) -> str:
        """Name without the words that tell two of a kind apart."""
    @property
    def phase(self) -> str:
        """Phase model in the parameter file."""
    @property
    def role(self) -> str:
        """``"matrix"``, ``"carbide"`` or ``"other"``."""
    @property
    def mole_percent(self) -> float:
        """Percent of the atoms."""
    @property
    def mass_percent(self) -> float:
        """Percent of the mass."""
    @property
    def volume_percent(self) -> float:
        """Percent of the volume; NaN without volume data."""
    @property
    def molar_mass(self) -> float:
        """[g per mol of atoms]"""
    @property
    def molar_volume(self) -> float:
        """[cm3 per mol of atoms]; NaN without volume data."""
    @property
    def density(self) -> float:
        """[g/cm3]; NaN without volume data."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Composition of this occurrence [weight percent]."""
    @property
    def atom_fraction(self) -> dict[str, float]:
        """Composition of this occurrence, sum 1."""
    @property
    def site_fractions(self) -> list[dict[str, float]]:
        """One dict per sublattice, ``"vacancy"`` included."""
    @property
    def sites(self) -> list[float]:
        """Sites of each sublattice per formula unit."""
    def _repr_html_(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

# bind_parameters.cpp

class ParameterSet(_Compiled):
    """Everything known about elements and phases, as read from parameter files."""

    @property
    def title(self) -> str:
        """Title and edition."""
    @property
    def files(self) -> list[str]:
        """Names of the files, lowest layer first."""
    @property
    def elements(self) -> list[str]:
        """Symbols of the elements that are modelled."""
    @property
    def phases(self) -> list[str]:
        """Names of the phase models."""
    @property
    def curves(self) -> list[str]:
        """Names of the curves."""
    @property
    def sources(self) -> dict[str, str]:
        """Key -> citation."""
    @property
    def weight_percent_validity(self) -> dict[str, tuple[float, float]]:
        """Element -> (low, high) [weight percent]."""
    @property
    def kelvin_validity(self) -> tuple[float, float]:
        """(low, high) [K]."""
    @property
    def parameter_inputs(self) -> list[Input]:
        """The numbers that sensitivities can be taken to."""
    @property
    def reference_state(self) -> str:
        """What the chemical potentials refer to."""
    @property
    def content_hash(self) -> str:
        """16 hexadecimal digits that identify the content."""
    def phase_model(self, name: str, elements: Sequence[str]) -> PhaseModel:
        """One phase compiled for the given elements."""
    def curve_value(self, name: str, kelvin: float) -> float:
        """Value of a named curve [J/mol]."""
    def _repr_html_(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def load_parameters(file: str, on_top_of: ParameterSet | None = None) -> ParameterSet:
    """Read and check a parameter file; raises DataError."""

def parse_parameters(
    text: str, file_name: str, on_top_of: ParameterSet | None = None
) -> ParameterSet:
    """Check the text of a parameter file; raises DataError."""

def write_parameters(parameters: ParameterSet) -> str:
    """The whole set as the text of one file, in canonical form."""

def sources_page(parameters: ParameterSet) -> str:
    """Where every number of the set comes from, as a page of Markdown."""

def default_parameters() -> ParameterSet:
    """The set that is compiled in; equal to the packaged file."""

# bind_phase_model.cpp

class Constituent(_Compiled):
    """A constituent of a phase model."""

    @property
    def name(self) -> str:
        """Element symbol or ``"vacancy"``."""
    @property
    def sublattice(self) -> int:
        """Index from 0."""

class PhaseDerivatives(_Compiled):
    """Energy and derivatives per mole of formula units, Eq. (G1)."""

    @property
    def value(self) -> float:
        """G [J/mol]."""
    @property
    def dt(self) -> float:
        """dG/dT = -S [J/(mol K)]."""
    @property
    def dt2(self) -> float:
        """d2G/dT2 [J/(mol K^2)]."""
    @property
    def dy(self) -> _Array:
        """dG/dy [J/mol], shape (n,)."""
    @property
    def dydt(self) -> _Array:
        """d2G/dydT [J/(mol K)], shape (n,)."""
    @property
    def dy2(self) -> _Array:
        """d2G/dy2 [J/mol], shape (n, n)."""

class PhaseModel(_Compiled):
    """One phase compiled for a list of elements."""

    @property
    def name(self) -> str:
        """Name of the phase in the parameter file."""
    @property
    def reachable(self) -> bool:
        """False when a sublattice has no constituent left."""
    @property
    def constituents(self) -> list[Constituent]:
        """All constituents, in the order of site fractions."""
    @property
    def sites(self) -> _Array:
        """Sites of the sublattice of each constituent, shape (n,)."""
    def curie_temperature(self, site_fractions: Sequence[float]) -> float:
        """Effective Curie temperature [K], Eq. (G5)."""
    def magnetic_moment(self, site_fractions: Sequence[float]) -> float:
        """Effective moment [Bohr magnetons], Eq. (G5)."""
    def _evaluate(
        self, kelvin: float, site_fractions: Sequence[float]
    ) -> PhaseDerivatives:
        """Gibbs energy and all derivatives, Eq. (G1)."""
    # The next two are added by phase_model.py.
    def derivatives(
        self,
        *,
        site_fractions: Sequence[float],
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
    ) -> PhaseDerivatives:
        """Gibbs energy and all derivatives per mole of formula units, Eq. (G1)."""
    def gibbs_energy(
        self,
        *,
        site_fractions: Sequence[float],
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
    ) -> float:
        """Gibbs energy [J/mol of formula units], Eq. (G1)."""

# bind_solve.cpp

class SolveOptions(_Compiled):
    """Settings of the minimizer."""

    def __init__(
        self,
        *,
        max_rounds: int = ...,
        max_newton_steps: int = ...,
        starts_per_phase: int = ...,
        balance_tolerance: float = ...,
        stability_tolerance: float = ...,
    ) -> None: ...
    @property
    def max_rounds(self) -> int:
        """Certificate rounds that may add phases, >= 1."""
    @property
    def max_newton_steps(self) -> int:
        """Most Newton steps of a refinement, >= 1."""
    @property
    def starts_per_phase(self) -> int:
        """Mutually distant starts of the certificate in each phase, >= 1."""
    @property
    def balance_tolerance(self) -> float:
        """Largest element balance error, relative, in (0, 1e-6]."""
    @property
    def stability_tolerance(self) -> float:
        """How far below the plane still counts as on it [J/mol of atoms], > 0."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SolveReport(_Compiled):
    """How a minimization went."""

    @property
    def status(self) -> str:
        """One or two words, such as ``"converged"`` or ``"iteration limit"``."""
    @property
    def certificate(self) -> str:
        """``"many starts"`` or ``"none"``."""
    @property
    def usable(self) -> bool:
        """True when every number may be used."""
    @property
    def reason(self) -> str:
        """One sentence."""
    @property
    def rounds(self) -> int:
        """Certificate rounds."""
    @property
    def newton_steps(self) -> int:
        """Newton steps of all rounds."""
    @property
    def columns(self) -> int:
        """Columns of the linear program."""
    @property
    def evaluations(self) -> int:
        """Evaluations of a phase with its Hessian."""
    @property
    def balance_residual(self) -> float:
        """Largest relative element balance error; NaN when not computed."""
    @property
    def present_residual(self) -> float:
        """Largest absolute D of a present set [J/mol of atoms]."""
    @property
    def lowest_absent(self) -> float:
        """Lowest D found of all others [J/mol of atoms]."""
    @property
    def unique(self) -> bool:
        """False when the equilibrium leaves amounts or potentials free."""
    @property
    def seconds(self) -> float:
        """Wall time [s]."""
    def _repr_html_(self) -> str: ...

# bind_equilibrium.cpp

class Equilibrium(_Compiled):
    """What the minimizer found."""

    @property
    def report(self) -> SolveReport:
        """How it went; look at ``report.usable`` first."""
    @property
    def kelvin(self) -> float:
        """Temperature [K]."""
    @property
    def gibbs_energy(self) -> float:
        """[J/mol of atoms]; NaN when not usable."""
    @property
    def chemical_potential(self) -> dict[str, float]:
        """Element -> [J/mol]."""
    @property
    def present(self) -> list[_PhasePoint]:
        """What is present; amounts in mol of formula units per mol of atoms."""
    @property
    def absent(self) -> list[_PhasePoint]:
        """Distinct local minima that are not present, the nearest first."""

def minimize(
    parameters: ParameterSet,
    elements: Sequence[str],
    mole_fractions: Sequence[float],
    kelvin: float,
    phases: Sequence[str],
    options: SolveOptions,
) -> Equilibrium:
    """Global minimum of the Gibbs energy, Eq. (E1)."""

# bind_state.cpp

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
    def suppressed(self) -> list[str]:
        """Phase models of the file that were not allowed to form."""
    def volume_percent_of(self, kind: str) -> float:
        """Volume percent of all occurrences of a kind; 0 when absent.

        Raises InputError for a kind that the parameter file does not know.
        """
    def __getitem__(self, name: str) -> Occurrence: ...
    def __contains__(self, name: str) -> bool: ...
    # The next ones are added by display.py; documented where they are written.
    def report(
        self,
        *,
        estimates: Sequence[tuple[str, float, float, float, str, str]] = (),
        digits: int = 0,
    ) -> Report: ...
    def to_csv(self, path: str | os.PathLike[str], *, wide: bool = False) -> None: ...
    def to_frame(self, *, wide: bool = False) -> pd.DataFrame: ...
    def to_json(self, path: str | os.PathLike[str]) -> None: ...
    def warn(self) -> None: ...
    def _repr_html_(self) -> str: ...

# bind_state_slope.cpp

class Input(_Compiled):
    """What a slope is taken with respect to."""

    @property
    def kind(self) -> str:
        """'temperature', 'element' or 'parameter'."""
    @property
    def name(self) -> str:
        """'temperature', an element, or the place in the parameter file."""
    @property
    def unit(self) -> str:
        """Unit of the input."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class StateSlope(_Compiled):
    """Derivatives of every number of a state with respect to one input."""

    @property
    def input(self) -> Input:
        """What the slopes are taken with respect to."""
    @property
    def occurrences(self) -> list[Occurrence]:
        """In the order of the state's."""
    @property
    def matrix(self) -> Matrix:
        """All matrix phases together."""
    @property
    def carbide_volume_percent(self) -> float:
        """Per unit of the input, as all numbers here."""
    @property
    def carbide_mass_percent(self) -> float: ...
    @property
    def carbon_activity(self) -> float: ...
    @property
    def gibbs_energy(self) -> float: ...
    @property
    def density(self) -> float: ...
    @property
    def chemical_potential(self) -> dict[str, float]: ...
    @property
    def driving_force(self) -> dict[str, float]: ...
    @property
    def one_sided(self) -> bool:
        """True close to a phase change: holds on the side of the state's phases."""
    @property
    def remark(self) -> str:
        """Why, when one-sided or not available; else empty."""
    def __getitem__(self, name: str) -> Occurrence: ...

# bind_quantity.cpp

class Quantity(_Compiled):
    """A number that every usable state has."""

    def __init__(
        self, name: str, unit: str, function: Callable[[State], float]
    ) -> None: ...
    @property
    def name(self) -> str:
        """For tables."""
    @property
    def unit(self) -> str:
        """Such as "wt%" or "vol%"; empty for a pure number."""
    @property
    def label(self) -> str:
        """Name with the unit."""
    def value(self, state: State) -> float:
        """NaN when the state is not usable."""
    def slope(self, state: State, slope: StateSlope) -> float:
        """Derivative, given that of the state."""

def quantity_matrix(element: str) -> Quantity:
    """See gibbsteel.quantities, as for the functions below."""

def quantity_volume_percent(kind: str) -> Quantity: ...
def quantity_mass_percent(kind: str) -> Quantity: ...
def quantity_carbide_volume_percent() -> Quantity: ...
def quantity_carbide_mass_percent() -> Quantity: ...
def quantity_carbon_activity() -> Quantity: ...

# bind_sweep.cpp

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
    def __getitem__(self, i: int) -> State: ...
    # The next ones are added by display.py; documented where they are written.
    def array(self, name: str) -> _Array: ...
    def report(self) -> Report: ...
    def to_csv(self, path: str | os.PathLike[str], *, wide: bool = False) -> None: ...
    def to_frame(self, *, wide: bool = False) -> pd.DataFrame: ...
    def to_json(self, path: str | os.PathLike[str]) -> None: ...
    def to_xarray(self) -> Any: ...
    def warn(self) -> None: ...
    def _repr_html_(self) -> str: ...

# bind_steel.cpp

class SoakOptions(_Compiled):
    """Settings of a soak."""

    def __init__(
        self,
        *,
        graphite: bool,
        phases: Sequence[str] | None,
        suppressed: Sequence[str],
        at_soak_temperature: bool,
        solve: SolveOptions,
    ) -> None: ...

class CompiledSteel(_Compiled):
    """The compiled half of gibbsteel.Steel."""

    def __init__(
        self,
        weight_percent: dict[str, float],
        name: str,
        parameters: ParameterSet,
        bind_tramp_elements: bool,
    ) -> None: ...
    @property
    def name(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate, sorted into modelled and not modelled."""
    @property
    def parameters(self) -> ParameterSet:
        """The parameter set in use."""
    @property
    def binds_tramp_elements(self) -> bool: ...
    def changed(self, weight_percent: dict[str, float], name: str) -> CompiledSteel: ...
    def soak(self, kelvin: float, options: SoakOptions) -> State:
        """Equilibrium at one temperature."""
    def sweep(
        self,
        kelvin: Sequence[float],
        options: SoakOptions,
        progress: Callable[[int], object] | None,
    ) -> Sweep:
        """Many soaks; `progress` gets the number done and stops the work by False."""
    def brief(self) -> str:
        """One line."""

# bind_report.cpp

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

def state_report(
    state: State,
    estimates: Sequence[tuple[str, float, float, float, str, str]],
    digits: int,
) -> Report:
    """The page of a state."""

def sweep_report(sweep: Sweep) -> Report:
    """The page of a sweep."""

def state_flag(state: State) -> str:
    """Empty; or NOT USABLE or OUTSIDE VALIDITY, and why."""

def sweep_flag(sweep: Sweep) -> str:
    """Empty; or which soaks are not usable or outside validity."""

def provenance(state: State) -> dict[str, str]:
    """What a table needs to be traced to its data."""

# bind_build_info.cpp

version: str

def build_info() -> _BuildInfo:
    """Version, compiler, flags and parameter file of this build."""

# bind_sensitivities.cpp

class Sensitivities(_Compiled):
    """A state, and the exact derivatives of every number in it."""

    @property
    def state(self) -> State:
        """The soak."""
    @property
    def slopes(self) -> list[StateSlope]:
        """Temperature first, then elements, then parameters."""
    @property
    def inputs(self) -> list[str]:
        """Names of all inputs."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per quantity, one column per input."""
    def __getitem__(self, name: str) -> StateSlope: ...
    def __contains__(self, name: str) -> bool: ...
    def __len__(self) -> int: ...

def sensitivities(
    steel: CompiledSteel,
    kelvin: float,
    options: SoakOptions,
    elements: Sequence[str] | None,
    parameters: Sequence[str],
    all_parameters: bool,
) -> Sensitivities:
    """Soaks and differentiates, Eq. (S1) to (S5)."""

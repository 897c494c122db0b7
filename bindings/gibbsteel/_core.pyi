"""Types of the compiled module; bindings/bind_*.cpp is the source of each class.

Everything here is read-only. Units and meaning are those of the C++ headers in
include/gibbsteel/. test_types.py compares this file with the built module.
"""

import os
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from typing import Any, ClassVar, Literal, Never, SupportsIndex, TypedDict, overload

import numpy as np
import numpy.typing as npt
import pandas as pd

from .steel import Steel

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

# bind_pickling.cpp

def _pickle_mark(class_name: str, format: int) -> str:
    """What a pickle of this class and format carries."""

def _check_pickle_mark(mark: object, class_name: str, newest: int) -> None:
    """Refuses the mark of another class or of a later format."""

def _refuse_damaged_pickle(class_name: str) -> Never:
    """Raises InputError."""

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
    def brief(self) -> str:
        """As given, weight percent: ``"0.55C 4.5Cr, balance Fe"``."""
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
        certify: str = ...,
        proof_gap: float = ...,
        proof_boxes: int = ...,
        proof_seconds: float = ...,
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
    @property
    def certify(self) -> str:
        """``"many starts"`` or ``"proof"``."""
    @property
    def proof_gap(self) -> float:
        """What the proof leaves open [J/mol of atoms]."""
    @property
    def proof_boxes(self) -> int:
        """Budget of the proof, per phase."""
    @property
    def proof_seconds(self) -> float:
        """Budget of the proof in all, wall time."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SolveReport(_Compiled):
    """How a minimization went."""

    @property
    def status(self) -> str:
        """One or two words, such as ``"converged"`` or ``"iteration limit"``."""
    @property
    def certificate(self) -> str:
        """``"proof"``, ``"covered"``, ``"many starts"``, ``"followed"``, ``"none"``."""
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
    def condition_number(self) -> float:
        """Of the scaled equilibrium matrix, Eq. (N4); infinite when not `unique`."""
    @property
    def digits_lost(self) -> float:
        """Of 16, by rounding, of amounts and potentials: log10 of the above."""
    @property
    def proven_gap(self) -> float:
        """Most that a lower Gibbs energy can be lower [J/mol of atoms]; else NaN."""
    @property
    def proof_boxes(self) -> int:
        """Boxes that the proof examined."""
    @property
    def proof(self) -> str:
        """How far the proof got; empty when it was not asked for."""
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
        particle_micrometres: float = ...,
        annealed_celsius: Any = None,
        annealed_fahrenheit: Any = None,
        parameters: ParameterSet | None = None,
    ) -> ShortSoak:
        """What dissolves in so many minutes; see timed_soak.py."""
    def timed_soaks(
        self,
        minutes: Iterable[float],
        *,
        particle_micrometres: float = ...,
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
        particle_micrometres: float = ...,
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
    @property
    def by_family(self) -> bool:
        """True: it rests on the hardening family of the steel."""
    def value(self, state: State) -> float:
        """NaN when the state is not usable."""
    def problems(self, parameters: ParameterSet) -> list[Problem]:
        """Elements and kinds of phase that it names and the parameter set lacks."""
    def slope(self, state: State, slope: StateSlope) -> float:
        """Derivative, given that of the state."""

def quantity_matrix(element: str) -> Quantity:
    """See gibbsteel.quantities, as for the functions below."""

def quantity_in_phase(kind: str, element: str) -> Quantity: ...

def quantity_in_carbides(element: str) -> Quantity: ...

def quantity_volume_percent(kind: str) -> Quantity: ...

def quantity_mass_percent(kind: str) -> Quantity: ...

def quantity_driving_force(kind: str) -> Quantity: ...

def quantity_carbide_volume_percent() -> Quantity: ...

def quantity_carbide_mass_percent() -> Quantity: ...

def quantity_carbon_activity() -> Quantity: ...

# bind_calibration_parts.cpp

class Measurement(_Compiled):
    """One measured number of a soaked steel."""

    def __init__(
        self,
        steel: str,
        weight_percent: dict[str, float],
        kelvin: float,
        quantity: Quantity,
        value: float,
        uncertainty: float,
        record: str = "",
        held_back: bool = False,
        *,
        soak: SoakOptions,
    ) -> None: ...
    @property
    def steel(self) -> str:
        """Its name."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Of the steel."""
    @property
    def celsius(self) -> float:
        """[C]"""
    @property
    def quantity(self) -> Quantity:
        """What was measured."""
    @property
    def value(self) -> float:
        """In the unit of the quantity."""
    @property
    def uncertainty(self) -> float:
        """One standard deviation, in the unit of the quantity."""
    @property
    def record(self) -> str:
        """Where it is published; may be empty."""
    @property
    def held_back(self) -> bool:
        """Only compared with, not fitted to."""

class CalibratedNumber(_Compiled):
    """A number of the parameter file before and after a calibration."""

    @property
    def place(self) -> str:
        """Place in the file."""
    @property
    def unit(self) -> str: ...
    @property
    def text(self) -> str:
        """What it is."""
    @property
    def before(self) -> float:
        """In the file."""
    @property
    def after(self) -> float: ...
    @property
    def prior_deviation(self) -> float: ...
    @property
    def deviation(self) -> float:
        """Standard deviation after the fit, Eq. (K4)."""
    @property
    def ratio(self) -> float:
        """Standard deviation over that of the prior."""
    @property
    def seen(self) -> bool:
        """False: the data say next to nothing about it."""
    def __eq__(self, other: object) -> bool: ...

class SeenDirection(_Compiled):
    """A combination of the numbers and how well the data see it, Eq. (K5)."""

    @property
    def singular_value(self) -> float: ...
    @property
    def ratio(self) -> float:
        """Standard deviation over that of the prior."""
    @property
    def along(self) -> list[float]:
        """Of each number, in prior standard deviations."""
    def __eq__(self, other: object) -> bool: ...

class LeftOutSteel(_Compiled):
    """Root mean squares of the misses of one steel, in uncertainties."""

    @property
    def steel(self) -> str: ...
    @property
    def count(self) -> int:
        """Measurements that count."""
    @property
    def before(self) -> float: ...
    @property
    def fitted(self) -> float:
        """With the steel in the fit."""
    @property
    def predicted(self) -> float:
        """By the fit without it."""
    @property
    def status(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...

# bind_measurement_outcome.cpp

class MeasurementOutcome(_Compiled):
    """A measurement before and after a calibration."""

    @property
    def steel(self) -> str: ...
    @property
    def record(self) -> str: ...
    @property
    def quantity(self) -> str:
        """Name of the quantity."""
    @property
    def unit(self) -> str: ...
    @property
    def celsius(self) -> float:
        """[C]"""
    @property
    def value(self) -> float:
        """Measured."""
    @property
    def uncertainty(self) -> float: ...
    @property
    def held_back(self) -> bool: ...
    @property
    def before(self) -> float:
        """Computed with the file; NaN where it cannot be."""
    @property
    def after(self) -> float:
        """Computed with the layer."""
    @property
    def residual_before(self) -> float:
        """(computed - measured) / uncertainty."""
    @property
    def residual_after(self) -> float: ...
    @property
    def residual_left_out(self) -> float:
        """By a fit without this steel."""
    @property
    def weight(self) -> float:
        """Of the last round; 0: not fitted to."""
    @property
    def left_out(self) -> int:
        """Evaluations of the fit in which it was left out."""
    @property
    def reason(self) -> str:
        """Of the last of them."""
    def __eq__(self, other: object) -> bool: ...

# bind_calibration.cpp

class Calibration(_Compiled):
    """Numbers of a parameter file fitted to measurements."""

    def _repr_html_(self) -> str: ...
    @property
    def status(self) -> str:
        """"converged", "stalled", "not converged", "nothing usable", "cancelled"."""
    @property
    def reason(self) -> str:
        """In one sentence, unless converged."""
    @property
    def loss(self) -> str: ...
    @property
    def loss_scale(self) -> float:
        """In uncertainties."""
    @property
    def numbers(self) -> list[CalibratedNumber]:
        """As asked for."""
    @property
    def measurements(self) -> list[MeasurementOutcome]:
        """As given."""
    @property
    def covariance(self) -> _Array:
        """Array (numbers, numbers), in their units; empty without a fit."""
    @property
    def directions(self) -> list[SeenDirection]:
        """Best seen first."""
    @property
    def steels(self) -> list[LeftOutSteel]:
        """Cross-validation."""
    @property
    def misfit_before(self) -> float:
        """Eq. (K1) with the file."""
    @property
    def misfit_after(self) -> float: ...
    @property
    def rounds(self) -> int:
        """Of reweighting."""
    @property
    def evaluations(self) -> int:
        """Of all soaks, in the fit."""
    @property
    def layer(self) -> str:
        """A parameter file; empty when there is none."""
    @property
    def remarks(self) -> list[str]:
        """On what the layer cannot hold."""
    @property
    def parameters(self) -> ParameterSet | None:
        """The file with the layer on it."""
    @property
    def below(self) -> str:
        """Title of the file calibrated."""
    @property
    def usable(self) -> bool:
        """There is a layer."""
    def rms_before(self, held_back: bool = False) -> float:
        """Root mean square of the misses, in uncertainties."""
    def rms_after(self, held_back: bool = False) -> float:
        """Root mean square of the misses, in uncertainties."""
    def save_layer(self, path: str | os.PathLike[str]) -> None: ...
    def to_frame(self) -> pd.DataFrame: ...
    def numbers_to_frame(self) -> pd.DataFrame: ...

def calibrate(
    measurements: Sequence[Measurement],
    numbers: Sequence[tuple[str, float]],
    on: ParameterSet | None,
    *,
    loss: str = "huber",
    loss_scale: float = 0.0,
    cross_validate: bool = True,
    most_evaluations: int = 200,
    threads: int = 0,
    progress: Callable[[int], object] | None = None,
    file_name: str = "calibration.json",
    title: str = "Calibrated numbers",
    edition: str = "1",
    licence: str = "CC0-1.0",
    start: dict[str, float] = ...,
) -> Calibration:
    """See gibbsteel.calibrate."""

# bind_search_options.cpp

class RecordedMeasurement(_Compiled):
    """A measurement and what is known of it."""

    @property
    def measurement(self) -> Measurement:
        """For calibrate()."""
    @property
    def source(self) -> str:
        """Citation."""
    @property
    def confidence(self) -> str:
        """'high', 'medium' or 'low'."""
    @property
    def from_memory(self) -> bool:
        """Quoted from memory, not looked up again."""
    @property
    def fitted_to(self) -> bool:
        """Numbers of the shipped file were fitted to it."""
    @property
    def remark(self) -> str:
        """For instance why the shipped file misses it; or empty."""

class EvidenceRow(_Compiled):
    """One measured number, computed as well."""

    @property
    def steel(self) -> str:
        """On which it was measured."""
    @property
    def record(self) -> str:
        """Its name in the file of measurements."""
    @property
    def source(self) -> str:
        """Citation."""
    @property
    def confidence(self) -> str:
        """'high', 'medium' or 'low'."""
    @property
    def remark(self) -> str:
        """Why the shipped file misses it; or empty."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Of that steel."""
    @property
    def kelvin(self) -> float:
        """Soak [K]."""
    @property
    def celsius(self) -> float:
        """Soak [C]."""
    @property
    def fahrenheit(self) -> float:
        """Soak [F]."""
    @property
    def distance(self) -> float:
        """Eq. (V1)."""
    @property
    def distance_by(self) -> str:
        """What it is largest in: an element or 'temperature'."""
    @property
    def phases(self) -> list[str] | None:
        """The only ones that may form; None: all."""
    @property
    def by_hardening(self) -> bool:
        """Martensite start, retained austenite or hardness."""
    @property
    def quantity(self) -> str:
        """What was measured."""
    @property
    def unit(self) -> str:
        """Of value, uncertainty and computed."""
    @property
    def value(self) -> float:
        """Measured."""
    @property
    def uncertainty(self) -> float:
        """Published."""
    @property
    def computed(self) -> float:
        """By the long-hold limit; NaN: see reason."""
    @property
    def miss(self) -> float:
        """(computed - value) / uncertainty."""
    @property
    def met(self) -> bool:
        """Missed by one uncertainty or less."""
    @property
    def from_memory(self) -> bool:
        """Quoted from memory."""
    @property
    def fitted_to(self) -> bool:
        """Numbers of the shipped file were fitted to it."""
    @property
    def reason(self) -> str:
        """Why it was not computed; or empty."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Evidence(_Compiled):
    """Measurements of the steels most like one, and what is computed for them."""

    @property
    def steel(self) -> str:
        """Its name."""
    @property
    def analysis(self) -> MillAnalysis:
        """Its certificate."""
    @property
    def parameters(self) -> str:
        """Title of the set."""
    @property
    def kelvin(self) -> float:
        """[K]"""
    @property
    def celsius(self) -> float:
        """[C]"""
    @property
    def fahrenheit(self) -> float:
        """[F]"""
    @property
    def measurements(self) -> int:
        """How many were looked through."""
    @property
    def rows(self) -> list[EvidenceRow]:
        """Nearest first."""
    @property
    def nearest(self) -> float:
        """Distance of the nearest, Eq. (V1): up to 1 a steel of this kind, up to 3 a
        related one."""
    @property
    def computed(self) -> int:
        """Rows with a number."""
    @property
    def met(self) -> int:
        """Of these, within the published uncertainty."""
    def __len__(self) -> int: ...
    def to_frame(self) -> pd.DataFrame: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def published_measurements() -> list[RecordedMeasurement]: ...
def load_measurements(file: str) -> list[RecordedMeasurement]: ...
def evidence(
    steel: CompiledSteel,
    kelvin: float,
    most_soaks: int,
    measurements: list[RecordedMeasurement] | None,
    unit: str,
) -> Evidence: ...

class SearchOptions(_Compiled):
    """Settings of a search for temperatures."""

    def __init__(
        self,
        *,
        node_spacing: float = 5.0,
        tolerance: float = 0.01,
        most_soaks: int = 20000,
    ) -> None: ...
    @property
    def node_spacing(self) -> float:
        """Of the soaks that the search starts from [K], 0.01 to 100."""
    @property
    def tolerance(self) -> float:
        """To which a temperature is located [K], 0.0001 to 1."""
    @property
    def most_soaks(self) -> int:
        """The search stops there and says so."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class PhaseField(_Compiled):
    """A stretch of temperatures with one set of phases, or with one kind of phase."""

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
    def low_edge(self) -> str:
        """``"change"``, ``"range"`` (end of what was searched) or ``"gap"``."""
    @property
    def high_edge(self) -> str:
        """``"change"``, ``"range"`` (end of what was searched) or ``"gap"``."""
    @property
    def phases(self) -> list[str]:
        """Kinds, in the order of the file."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class PhaseGap(_Compiled):
    """Temperatures at which nothing is known."""

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
    def reason(self) -> str:
        """One sentence."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def usual_range(parameters: ParameterSet) -> tuple[float, float]:
    """The range that is searched when none is given [K]."""

# bind_phase_changes.cpp

class PhaseChange(_Compiled):
    """Phases appear or disappear; all words are those of heating."""

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
    def bracket_width(self) -> float:
        """[K]: `below` and `above` are that far apart."""
    @property
    def uncertainty_at_least(self) -> float:
        """One standard deviation of the temperature by the file [K], Eq. (B8)."""
    @property
    def appears(self) -> list[str]:
        """Kinds."""
    @property
    def disappears(self) -> list[str]:
        """Kinds."""
    @property
    def invariant(self) -> bool:
        """True: several phases react at one temperature, and amounts jump."""
    @property
    def text(self) -> str:
        """One line."""
    @property
    def below(self) -> State:
        """State below the change."""
    @property
    def above(self) -> State:
        """State above the change."""

class TransformationLimit(_Compiled):
    """A temperature that exists (else None), and why."""

    @property
    def kelvin(self) -> float | None:
        """Temperature [K]."""
    @property
    def celsius(self) -> float | None:
        """Temperature [C]."""
    @property
    def fahrenheit(self) -> float | None:
        """Temperature [F]."""
    @property
    def text(self) -> str:
        """One line."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class PhaseChanges(_Compiled):
    """Where phases appear and disappear on heating."""

    def _repr_html_(self) -> str: ...
    @property
    def temperatures_kelvin(self) -> tuple[float, ...]:
        """Of all changes, upwards [K]; empty when there is none."""
    @property
    def temperatures_celsius(self) -> tuple[float, ...]:
        """Of all changes, upwards [C]; empty when there is none."""
    @property
    def temperatures_fahrenheit(self) -> tuple[float, ...]:
        """Of all changes, upwards [F]; empty when there is none."""
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
    def tolerance(self) -> float:
        """To which changes are located [K]."""
    @property
    def changes(self) -> list[PhaseChange]:
        """Upwards."""
    @property
    def fields(self) -> list[PhaseField]:
        """Upwards."""
    @property
    def gaps(self) -> list[PhaseGap]:
        """Upwards."""
    @property
    def ae1(self) -> TransformationLimit:
        """Austenite first forms."""
    @property
    def ae3(self) -> TransformationLimit:
        """The last ferrite is gone."""
    @property
    def acm(self) -> TransformationLimit:
        """M3C is gone, above Ae3."""
    @property
    def low(self) -> State:
        """State at the low end."""
    @property
    def high(self) -> State:
        """State at the high end of what was searched."""
    @property
    def soaks(self) -> int:
        """Number that the search took."""
    @property
    def stopped(self) -> str:
        """Why the range was not searched to its end; else empty."""
    @property
    def complete(self) -> bool:
        """True when nothing in the range is unknown."""
    @property
    def kinds(self) -> list[str]:
        """Kinds that are present anywhere."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of all states."""
    def intervals(self, kind: str) -> list[PhaseField]:
        """Where a kind is present."""
    def dissolution(self, kind: str) -> Dissolution:
        """The temperature above which a kind is gone."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per change."""

def phase_changes(
    steel: CompiledSteel,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> PhaseChanges: ...

# bind_dissolution.cpp

class Dissolution(_Compiled):
    """The temperature above which a kind of phase is gone."""

    def _repr_html_(self) -> str: ...
    @property
    def kelvin(self) -> float | None:
        """Temperature [K]; None unless `status` is ``"found"``."""
    @property
    def celsius(self) -> float | None:
        """Temperature [C]; None unless `status` is ``"found"``."""
    @property
    def fahrenheit(self) -> float | None:
        """Temperature [F]; None unless `status` is ``"found"``."""
    @property
    def kind(self) -> str:
        """Kind of phase."""
    @property
    def status(self) -> str:
        """``"found"``, ``"never present"``, ``"still present"`` or ``"not known"``."""
    @property
    def uncertainty_at_least(self) -> float:
        """One standard deviation of the temperature by the file [K], Eq. (B8)."""
    @property
    def intervals(self) -> list[PhaseField]:
        """Where the kind is present."""
    @property
    def text(self) -> str:
        """The answer, or why there is none."""
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
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
    def analysis(self) -> MillAnalysis:
        """The mill certificate."""
    @property
    def parameters(self) -> str:
        """Title and edition of the file."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """On both sides of the answer; without one, at the ends of the range."""

def dissolution_temperature(
    steel: CompiledSteel,
    kind: str,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> Dissolution: ...

# bind_melting.cpp

class MeltingRange(_Compiled):
    """Between which temperatures a steel melts."""

    def _repr_html_(self) -> str: ...
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
    def solidus_kelvin(self) -> float | None:
        """The first liquid forms on heating [K]; None where that is not found."""
    @property
    def solidus_celsius(self) -> float | None:
        """The first liquid forms on heating [C]; None where that is not found."""
    @property
    def solidus_fahrenheit(self) -> float | None:
        """The first liquid forms on heating [F]; None where that is not found."""
    @property
    def liquidus_kelvin(self) -> float | None:
        """The last solid is gone [K]; None where that is not found."""
    @property
    def liquidus_celsius(self) -> float | None:
        """The last solid is gone [C]; None where that is not found."""
    @property
    def liquidus_fahrenheit(self) -> float | None:
        """The last solid is gone [F]; None where that is not found."""
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def status(self) -> str:
        """How it ended.

        ``"found"``, ``"solidus only"``, ``"liquidus only"``, ``"partly molten"``,
        ``"solid"``, ``"molten"``, ``"no liquid"`` or ``"not known"``.
        """
    @property
    def solids_at_solidus(self) -> list[str]:
        """Kinds just below the solidus; empty without one."""
    @property
    def primary_solids(self) -> list[str]:
        """Kinds that melt last; empty without a liquidus."""
    @property
    def at_solidus(self) -> State:
        """The state just above the solidus: it holds the first liquid."""
    @property
    def at_liquidus(self) -> State:
        """The state just below the liquidus: it holds the last solid."""
    @property
    def fields(self) -> list[PhaseField]:
        """Upwards, of the whole range."""
    @property
    def text(self) -> str:
        """The answer, or why there is none."""
    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate."""
    @property
    def parameters(self) -> str:
        """Title and edition of the file."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of both states."""

def melting_search_range(parameters: ParameterSet) -> tuple[float, float]:
    """The range that is searched when none is given [K]."""

def melting_range(
    steel: CompiledSteel,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> MeltingRange: ...

# bind_temperature_search.cpp

class Crossing(_Compiled):
    """A temperature with the wanted value."""

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
    def bracket_width(self) -> float:
        """[K]"""
    @property
    def uncertainty_at_least(self) -> float:
        """One standard deviation of the temperature by the file [K], Eq. (B8)."""
    @property
    def kind(self) -> str:
        """``"crossing"``, or ``"jump"``: the quantity jumps across the value."""
    @property
    def rising(self) -> bool:
        """It grows with temperature."""
    @property
    def value(self) -> float:
        """Of `state`."""
    @property
    def below(self) -> float:
        """Value at the low end of the bracket."""
    @property
    def above(self) -> float:
        """Value at the high end of the bracket."""
    @property
    def state(self) -> State:
        """The soak at this temperature; for a jump that below it."""

class TemperatureSearch(_Compiled):
    """All temperatures at which a quantity has a value."""

    def _repr_html_(self) -> str: ...
    @property
    def temperatures_kelvin(self) -> tuple[float, ...]:
        """Of all crossings, upwards [K]; empty when there is none."""
    @property
    def temperatures_celsius(self) -> tuple[float, ...]:
        """Of all crossings, upwards [C]; empty when there is none."""
    @property
    def temperatures_fahrenheit(self) -> tuple[float, ...]:
        """Of all crossings, upwards [F]; empty when there is none."""
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
    def quantity(self) -> str:
        """Name of the quantity."""
    @property
    def unit(self) -> str:
        """Of the quantity."""
    @property
    def target(self) -> float:
        """The value that was asked for."""
    @property
    def status(self) -> str:
        """How it ended.

        ``"found"``, ``"jumps over"`` (every crossing is a jump), ``"never reached"``,
        ``"always equal"``, ``"not computable"`` or ``"not known"``.
        """
    @property
    def crossings(self) -> list[Crossing]:
        """Upwards."""
    @property
    def equal_kelvin(self) -> list[tuple[float, float]]:
        """Where it has the value throughout [K]."""
    @property
    def lowest(self) -> tuple[float, float]:
        """(value, temperature [K]) of the soak with the lowest value."""
    @property
    def highest(self) -> tuple[float, float]:
        """(value, temperature [K]) of the soak with the highest value."""
    @property
    def gaps(self) -> list[PhaseGap]:
        """Upwards."""
    @property
    def no_value(self) -> list[PhaseGap]:
        """Where the quantity has no value, and why."""
    @property
    def soaks(self) -> int:
        """Number that the search took."""
    @property
    def stopped(self) -> str:
        """Why the range was not searched to its end; else empty."""
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
    def complete(self) -> bool:
        """True when nothing in the range is unknown."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of the crossings; without one, of `low` and `high`."""
    @property
    def low(self) -> State:
        """The soak at the low end of what was searched."""
    @property
    def high(self) -> State:
        """The soak at the high end of what was searched."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per crossing."""

def temperature_for(
    steel: CompiledSteel,
    quantity: Quantity,
    value: float,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> TemperatureSearch: ...

# bind_matching_temperature.cpp

class MatchingTemperature(_Compiled):
    """The temperatures at which another steel has the value of a reference."""

    def _repr_html_(self) -> str: ...
    @property
    def temperatures_kelvin(self) -> tuple[float, ...]:
        """Of all crossings, upwards [K]; empty when there is none."""
    @property
    def temperatures_celsius(self) -> tuple[float, ...]:
        """Of all crossings, upwards [C]; empty when there is none."""
    @property
    def temperatures_fahrenheit(self) -> tuple[float, ...]:
        """Of all crossings, upwards [F]; empty when there is none."""
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
    def reference(self) -> State:
        """The soak to be matched."""
    @property
    def value(self) -> float:
        """Of the quantity in `reference`."""
    @property
    def search(self) -> TemperatureSearch:
        """Of the other steel: status and crossings."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of the reference, those of the search, and of hardening
        estimates of two families."""
    def to_frame(self) -> pd.DataFrame:
        """Table (pandas): one row per crossing, with the reference."""

def matching_temperature(
    reference: State,
    steel: CompiledSteel,
    quantity: Quantity,
    kelvin: tuple[float, float],
    options: SoakOptions,
    search: SearchOptions,
    progress: Callable[[int], object] | None,
) -> MatchingTemperature: ...

# bind_hardening_window.cpp

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
        ``"melting"`` or ``"unknown"``.
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
        prove_every: int,
        temperature_unit: str,
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
    def with_parameters(self, parameters: ParameterSet) -> CompiledSteel: ...
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

# bind_matrix_twin.cpp

class MakeableSteps(_Compiled):
    """Steps to which weight percents are rounded."""

    def __init__(self, steps: dict[str, float] = ..., others: float = 0.05) -> None: ...
    @staticmethod
    def none() -> MakeableSteps:
        """Leaves every number as it is."""
    @property
    def steps(self) -> dict[str, float]:
        """Element -> step [weight percent]."""
    @property
    def others(self) -> float:
        """Of elements not listed [weight percent]."""
    @property
    def round(self) -> bool:
        """False: nothing is rounded."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class TwinStudy(_Compiled):
    """A matrix twin and its residual carbide at the same and at other temperatures."""

    def _repr_html_(self) -> str: ...
    @property
    def reference(self) -> State:
        """The full-carbide steel at the soak."""
    @property
    def exact(self) -> dict[str, float]:
        """Its matrix before rounding [weight percent]."""
    @property
    def twin(self) -> Steel:
        """The steel made from it."""
    @property
    def same(self) -> State:
        """The twin at the same soak."""
    @property
    def others(self) -> Sweep:
        """The twin at the other temperatures."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """That the twin is of another hardening family."""

def matrix_twin(
    steel: CompiledSteel, state: State, steps: MakeableSteps, keep_not_modelled: bool
) -> CompiledSteel:
    """See gibbsteel.Steel.matrix_twin."""

def matrix_twin_at(
    steel: CompiledSteel, kelvin: float, steps: MakeableSteps, keep_not_modelled: bool
) -> CompiledSteel:
    """The same from a soak."""

def twin_study(
    steel: CompiledSteel,
    kelvin: float,
    others: Sequence[float],
    steps: MakeableSteps,
    keep_not_modelled: bool,
    unit: str,
) -> TwinStudy:
    """See gibbsteel.Steel.twin_study."""

# bind_comparison.cpp

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
    def __getitem__(self, name: str) -> ComparisonRow: ...
    def __len__(self) -> int: ...

def compare(
    states: Sequence[State], quantities: Sequence[Quantity], temperature_unit: str
) -> Comparison:
    """See gibbsteel.compare."""

# bind_measured_carbide.cpp

class MeasuredCarbide(_Compiled):
    """Carbide of one kind, counted under the microscope."""

    def __init__(
        self,
        kind: str,
        volume_percent: float,
        standard_deviation: float = 0.0,
        smallest_counted: float | None = None,
    ) -> None: ...
    @property
    def kind(self) -> str:
        """For instance ``"M3C"``."""
    @property
    def volume_percent(self) -> float:
        """Of the steel."""
    @property
    def standard_deviation(self) -> float:
        """Of the count [volume percent]; 0 when not known."""
    @property
    def smallest_counted(self) -> float | None:
        """Smallest particle that was counted [micrometre]."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class CarbideInBalance(_Compiled):
    """A carbide as it entered the balance of a short soak."""

    @property
    def kind(self) -> str:
        """For instance ``"M3C"``."""
    @property
    def volume_percent(self) -> float:
        """As measured, kept or computed."""
    @property
    def standard_deviation(self) -> float:
        """Of the count [volume percent]."""
    @property
    def long_hold_volume(self) -> float:
        """In the state that was started from [volume percent]."""
    @property
    def measured(self) -> bool:
        """False: kept at the long-hold volume; of a limit or timed soak, computed."""
    @property
    def composition(self) -> str:
        """``"soak"`` or ``"annealed"``: where it was taken from."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Composition used."""
    @property
    def other_source_exists(self) -> bool:
        """True when the other source has the kind as well."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class MatrixBand(_Compiled):
    """One element of the matrix and how sure it is [weight percent]."""

    @property
    def element(self) -> str:
        """Symbol."""
    @property
    def value(self) -> float:
        """As on the state."""
    @property
    def long_hold(self) -> float:
        """In the state that was started from."""
    @property
    def standard_deviation(self) -> float:
        """From those of the counts."""
    @property
    def other_composition(self) -> float:
        """Of measured carbide with that of the other source; else `value`."""
    @property
    def low(self) -> float:
        """See measured_carbide.hpp; of a timed soak that of a third of the minutes."""
    @property
    def high(self) -> float:
        """Of a timed soak that of three times the minutes."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class ShortSoak(_Compiled):
    """Carbide of a short soak, seen or computed, and its matrix."""

    def _repr_html_(self) -> str: ...
    def report(self, **quench: Any) -> Report: ...
    def to_csv(self, path: str | os.PathLike[str]) -> None: ...
    def to_frame(self) -> pd.DataFrame: ...
    @property
    def state(self) -> State:
        """Of the short soak; no equilibrium."""
    @property
    def measured(self) -> list[MeasuredCarbide]:
        """As entered; empty where the carbide is computed."""
    @property
    def carbides(self) -> list[CarbideInBalance]:
        """As they entered the balance."""
    @property
    def bands(self) -> list[MatrixBand]:
        """Elements of the matrix."""
    @property
    def annealed_kelvin(self) -> float:
        """Annealing temperature for carbide compositions [K]."""
    @property
    def annealed_celsius(self) -> float:
        """The same [C]."""
    @property
    def annealed_fahrenheit(self) -> float:
        """The same [F]."""
    def band(self, element: str) -> MatrixBand:
        """The band of one element."""
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
        """What a quench gives; see gibbsteel.hardening.hardening."""

def with_measured_carbide(
    state: State,
    measured: Sequence[MeasuredCarbide],
    composition: str,
    annealed_kelvin: float | None,
    unlisted: str,
    parameters: ParameterSet | None,
) -> ShortSoak:
    """See gibbsteel.State.with_measured_carbide."""

def short_soak_limit(
    state: State, annealed_kelvin: float | None, parameters: ParameterSet | None
) -> ShortSoak:
    """See gibbsteel.State.short_soak_limit."""

def quantity_short_soak_matrix(
    element: str, annealed_kelvin: float | None, parameters: ParameterSet | None
) -> Quantity:
    """See gibbsteel.quantities.short_soak_matrix."""

# bind_timed_soak.cpp

class MinutesFor(_Compiled):
    """How long until the matrix holds so much of an element."""

    @property
    def status(self) -> str:
        """'found', 'at once', 'never reached' or 'too long'."""
    @property
    def minutes(self) -> float:
        """At temperature; 0 at once, NaN when not found."""
    @property
    def low_minutes(self) -> float:
        """A third of them, as far as size and diffusion are known."""
    @property
    def high_minutes(self) -> float:
        """Three times them."""
    @property
    def at_first(self) -> float:
        """Of the element in the matrix by the short-soak limit [wt%]."""
    @property
    def at_last(self) -> float:
        """At the end [wt%]."""
    @property
    def text(self) -> str:
        """One sentence."""

def minutes_for(
    state: State,
    element: str,
    weight_percent: float,
    particle_micrometres: float,
    annealed_kelvin: float | None,
    parameters: ParameterSet | None,
) -> MinutesFor:
    """See gibbsteel.State.minutes_for."""

default_particle_micrometres: float

def timed_soaks(
    state: State,
    minutes: Sequence[float],
    particle_micrometres: float,
    annealed_kelvin: float | None,
    parameters: ParameterSet | None,
) -> list[ShortSoak]:
    """See gibbsteel.State.timed_soaks."""

def quantity_timed_soak_matrix(
    element: str,
    minutes: float,
    particle_micrometres: float,
    annealed_kelvin: float | None,
    parameters: ParameterSet | None,
) -> Quantity:
    """See gibbsteel.quantities.timed_soak_matrix."""

def quantity_after_minutes(
    quantity: Quantity,
    minutes: float,
    particle_micrometres: float,
    annealed_kelvin: float | None,
    parameters: ParameterSet | None,
) -> Quantity:
    """See gibbsteel.quantities.after_minutes."""

# bind_composition_for.cpp

class CompositionCrossing(_Compiled):
    """A composition at which the quantity has the value."""

    @property
    def weight_percent(self) -> float:
        """Of the element."""
    @property
    def bracket_width(self) -> float:
        """[weight percent]"""
    @property
    def kind(self) -> str:
        """``"crossing"``, or ``"jump"``: the quantity jumps across the value."""
    @property
    def rising(self) -> bool:
        """The quantity grows with the element."""
    @property
    def value(self) -> float:
        """Of `state`."""
    @property
    def below(self) -> float:
        """At the low end of the bracket."""
    @property
    def above(self) -> float:
        """At the high end of the bracket."""
    @property
    def state(self) -> State:
        """The soak at this composition; for a jump that with less."""

class CompositionSearch(_Compiled):
    """All weight percents of one element at which a quantity has a value."""

    def _repr_html_(self) -> str: ...
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def element(self) -> str:
        """The one that is varied."""
    @property
    def quantity(self) -> str:
        """Name of the quantity."""
    @property
    def unit(self) -> str:
        """Unit of the quantity."""
    @property
    def target(self) -> float:
        """The wanted value."""
    @property
    def celsius(self) -> float:
        """Temperature of the soaks."""
    @property
    def range(self) -> tuple[float, float]:
        """Lowest and highest weight percent."""
    @property
    def status(self) -> str:
        """``"found"``, ``"jumps over"``, ``"never reached"``, ..."""
    @property
    def crossings(self) -> list[CompositionCrossing]:
        """Upwards."""
    @property
    def weight_percents(self) -> list[float]:
        """Those of the crossings, jumps included."""
    @property
    def equal(self) -> list[tuple[float, float]]:
        """Where the quantity has the value throughout."""
    @property
    def lowest(self) -> float:
        """Lowest value of all soaks of the search."""
    @property
    def highest(self) -> float:
        """Highest value of all soaks of the search."""
    @property
    def soaks(self) -> int:
        """That the search took."""
    @property
    def stopped(self) -> str:
        """Why the range is not searched to its end; else empty."""
    @property
    def text(self) -> str:
        """One sentence: the answer, or why there is none."""
    @property
    def complete(self) -> bool:
        """The whole range is known."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of the crossings; without one, of `low` and `high`."""
    @property
    def low(self) -> State:
        """The soak at the low end of what was searched."""
    @property
    def high(self) -> State:
        """The soak at the high end of what was searched."""

def composition_for(
    steel: CompiledSteel,
    element: str,
    quantity: Quantity,
    value: float,
    low: float,
    high: float,
    kelvin: float,
    options: SoakOptions,
    steps: int = 40,
    tolerance: float = 0.0001,
    most_soaks: int = 20000,
    progress: Callable[[int], object] | None = None,
) -> CompositionSearch:
    """See gibbsteel.Steel.composition_for."""

# bind_design.cpp

class DesignTarget(_Compiled):
    """One number of a soak and what it shall be."""

    def __init__(
        self,
        quantity: Quantity,
        kelvin: float,
        sense: str,
        wanted: float,
        tolerance: float | None = None,
        unit: str = "celsius",
    ) -> None: ...
    @property
    def quantity(self) -> Quantity:
        """What the target is about."""
    @property
    def kelvin(self) -> float:
        """Temperature of the soak."""
    @property
    def sense(self) -> str:
        """``"equal"``, ``"at least"`` or ``"at most"``."""
    @property
    def wanted(self) -> float:
        """In the unit of the quantity."""
    @property
    def tolerance(self) -> float:
        """How far off still counts as met; 0 for a limit that is to be kept."""

def matrix_targets(state: State, elements: Sequence[str]) -> list[DesignTarget]:
    """See gibbsteel.matrix_targets."""

class TargetOutcome(_Compiled):
    """How a target came out."""

    @property
    def name(self) -> str:
        """Of the quantity."""
    @property
    def unit(self) -> str:
        """Of the quantity."""
    @property
    def celsius(self) -> float:
        """Temperature of the soak."""
    @property
    def sense(self) -> str:
        """``"equal"``, ``"at least"`` or ``"at most"``."""
    @property
    def wanted(self) -> float:
        """In the unit of the quantity."""
    @property
    def tolerance(self) -> float:
        """How far off still counts as met; 0 for a limit that is kept."""
    @property
    def value(self) -> float:
        """Of the final soak."""
    @property
    def miss(self) -> float:
        """Value less wanted; 0 for a limit that is kept."""
    @property
    def met(self) -> bool:
        """The miss is within the tolerance; a limit is kept."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Design(_Compiled):
    """A composition, and how it meets its targets."""

    def _repr_html_(self) -> str: ...
    @property
    def status(self) -> str:
        """``"met"``, ``"compromise"``, ``"infeasible"``, ``"not converged"`` or
        ``"stopped"``."""
    @property
    def steel(self) -> Steel:
        """The result."""
    @property
    def weight_percent(self) -> dict[str, float]:
        """Of the elements that were free."""
    @property
    def at_bound(self) -> list[str]:
        """Elements held back by a bound."""
    @property
    def targets(self) -> list[TargetOutcome]:
        """How each came out."""
    @property
    def states(self) -> list[State]:
        """Final soaks, one per temperature of the targets."""
    @property
    def soaks(self) -> int:
        """That the search took."""
    @property
    def starts(self) -> int:
        """That were followed."""
    @property
    def text(self) -> str:
        """One sentence: the answer, or why there is none."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """The distinct warnings of the final soaks."""

def design(
    start: CompiledSteel,
    elements: Sequence[tuple[str, float, float]],
    targets: Sequence[DesignTarget],
    starts: int = 6,
    candidates: int = 24,
    most_steps: int = 80,
    *,
    steps: MakeableSteps,
    soak: SoakOptions,
    progress: Callable[[int], object] | None = None,
) -> Design:
    """See gibbsteel.design."""

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
    def __contains__(self, name: object) -> bool: ...
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

# bind_estimate.cpp

class Estimate(_Compiled):
    """A number with its band and where it comes from."""

    @property
    def name(self) -> str:
        """For instance ``"martensite start"``."""
    @property
    def value(self) -> float:
        """In `unit`; NaN when there is none, `remarks` then says why."""
    @property
    def low(self) -> float:
        """About two in three measurements lie in the band, of hardness more."""
    @property
    def high(self) -> float:
        """Upper end of the band."""
    @property
    def unit(self) -> str:
        """``"C"``, ``"vol%"``, ``"HV"``, ``"HRC"``, ``"um"``."""
    @property
    def equation(self) -> str:
        """Key of the equation, and what was added to it."""
    @property
    def source(self) -> str:
        """Citation of the equation."""
    @property
    def in_range(self) -> bool:
        """False: an input lies outside the stated range of the equation."""
    @property
    def remarks(self) -> list[str]:
        """What to know about it."""
    @property
    def known(self) -> bool:
        """False when there is no value."""
    def __float__(self) -> float: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def hrc_from_hv(hv: float) -> float:
    """Rockwell C from Vickers, Eq. (H21)."""

def hv_from_hrc(hrc: float) -> float:
    """Vickers from Rockwell C, Eq. (H21)."""

def carbide_hardness(kind: str) -> float:
    """Hardness of a kind of carbide [HV]."""

def mixture_hardness(
    *, martensite: float, austenite: float, carbide: float, carbide_hv: float
) -> float:
    """Martensite [HV] with fractions of austenite and carbide, Eq. (H20)."""

def quenched_hardness(
    *, martensite: float, austenite: float, carbide: float, carbide_hv: float
) -> float:
    """Eq. (H20) as it is used for estimates, with at most 12 % carbide [HV]."""

class TradeIndices(_Compiled):
    """The trade's rules of thumb, from weight percents."""

    @property
    def molybdenum_equivalent(self) -> float:
        """Mo + W/2, Eq. (H26)."""
    @property
    def carbon_balance(self) -> float:
        """C - 0.033W - 0.063Mo - 0.06Cr - 0.2V, Eq. (H27)."""
    @property
    def pitting_index(self) -> float:
        """Cr + 3.3(Mo + W/2) + 16N, Eq. (H28)."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def trade_indices(weight_percent: dict[str, float]) -> TradeIndices:
    """TradeIndices of a composition in weight percent."""

class HardeningFamily(_Compiled):
    """What one family of steels needs beside the general equations."""

    @property
    def key(self) -> str:
        """By which it is chosen: ``"high-speed"``."""
    @property
    def name(self) -> str:
        """In words."""
    @property
    def rule(self) -> str:
        """Composition by which it is chosen [wt% of the steel]."""
    @property
    def start_offset(self) -> float:
        """Added to the martensite start of Eq. (H12) [C]."""
    @property
    def start_error(self) -> float:
        """Standard deviation [C]."""
    @property
    def start_scatter(self) -> float:
        """Of the records about the offset [C]."""
    @property
    def start_records(self) -> int:
        """Number of records behind the offset."""
    @property
    def transformation_rate(self) -> float:
        """In Eq. (H13) [1/C]."""
    @property
    def retained_error(self) -> float:
        """Standard deviation of the fraction of retained austenite."""
    @property
    def retained_records(self) -> int:
        """Number of records behind the rate; 0: the published rate."""
    @property
    def hardness_offset(self) -> float:
        """Added to the as-quenched hardness [HV]."""
    @property
    def hardness_error(self) -> float:
        """Standard deviation [HV]."""
    @property
    def hardness_records(self) -> int:
        """Number of records behind the offset."""
    @property
    def hardness_steels(self) -> int:
        """Number of steels that the records are of."""
    @property
    def hardness_soaked(self) -> int:
        """Of the records: austenite computed with the shipped file, so the offset takes
        up what that file has wrong in it."""
    @property
    def fitted(self) -> str:
        """Which records."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def hardening_families() -> list[HardeningFamily]:
    """All families."""

# bind_property_equations.cpp

class PropertyInput(_Compiled):
    """What an equation may read; each kind reads its own part."""

    def __init__(
        self,
        weight_percent: dict[str, float],
        *,
        martensite_start: float = ...,
        coldest_celsius: float = ...,
        cooling_rate: float = ...,
        particle_diameter: float = ...,
        carbide_fraction: float = ...,
    ) -> None: ...
    @property
    def weight_percent(self) -> dict[str, float]:
        """Of the austenite."""
    @property
    def martensite_start(self) -> float:
        """[C], for retained austenite."""
    @property
    def coldest_celsius(self) -> float:
        """Coldest temperature of the quench [C]."""
    @property
    def cooling_rate(self) -> float:
        """At 700 C [C/h], for martensite hardness."""
    @property
    def particle_diameter(self) -> float:
        """Mean of the carbide [um], for grain pinning."""
    @property
    def carbide_fraction(self) -> float:
        """Of the volume, 0 to 1, for grain pinning."""

class PropertySlope(_Compiled):
    """Derivatives of an equation with respect to what it reads."""

    @property
    def weight_percent(self) -> dict[str, float]:
        """Per wt%; elements that do not matter left out."""
    @property
    def martensite_start(self) -> float:
        """Per C."""
    @property
    def carbide_fraction(self) -> float:
        """Per unit of the fraction."""

class PropertyEquation(_Compiled):
    """One equation of the trade."""

    @property
    def kind(self) -> str:
        """``"martensite start"``, ``"retained austenite"``, ..."""
    @property
    def unit(self) -> str:
        """Of what it gives: ``"C"``, ``""`` (a fraction), ``"HV"``, ``"um"``."""
    @property
    def key(self) -> str:
        """By which it is chosen."""
    @property
    def label(self) -> str:
        """``"H7"``; empty for your own."""
    @property
    def formula(self) -> str:
        """As text, weight percents of the austenite."""
    @property
    def source(self) -> str:
        """Citation."""
    @property
    def ranges(self) -> dict[str, tuple[float, float]]:
        """Element -> (low, high) [wt%] within which the source says it holds."""
    @property
    def elements(self) -> list[str]:
        """That it has a term for; empty when not known."""
    @property
    def error(self) -> float:
        """Typical, one standard deviation, in the unit."""
    @property
    def note(self) -> str:
        """What to know when using it."""
    def value(self, input: PropertyInput) -> float:
        """What it gives."""
    def slope_at(self, input: PropertyInput) -> PropertySlope:
        """Its derivatives."""

class PropertyEquations(_Compiled):
    """The equations to choose from; never changes."""

    def __init__(self) -> None: ...
    @property
    def all(self) -> list[PropertyEquation]:
        """The built-in ones, then your own."""
    def keys(self, kind: str) -> list[str]:
        """Keys of one kind."""
    def at(self, kind: str, key: str) -> PropertyEquation:
        """By kind and key."""
    def with_equation(
        self,
        kind: str,
        key: str,
        value: Callable[[PropertyInput], float],
        *,
        formula: str = "",
        source: str = "",
        ranges: dict[str, tuple[float, float]] = ...,
        elements: Sequence[str] = ...,
        error: float = 0.0,
        note: str = "",
    ) -> PropertyEquations:
        """These and one more; `value` is called with a PropertyInput."""
    def __len__(self) -> int: ...

# bind_hardening.cpp

class HardeningOptions(_Compiled):
    """Settings of hardening estimates; None is the default of C++."""

    def __init__(
        self,
        *,
        coldest_kelvin: float | None,
        family: str | None,
        martensite_start: str | None,
        retained_austenite: str | None,
        martensite_hardness: str | None,
        grain_pinning: str | None,
        particle_diameter: float | None,
        cooling_rate: float | None,
        equations: PropertyEquations | None,
    ) -> None: ...

class HardeningEstimates(_Compiled):
    """What quenching makes of a soaked steel."""

    def _repr_html_(self) -> str: ...
    @property
    def steel(self) -> str:
        """Name of the steel; may be empty."""
    @property
    def analysis(self) -> MillAnalysis:
        """MillAnalysis of the steel."""
    @property
    def parameters(self) -> str:
        """Title and edition of the set."""
    @property
    def parameters_hash(self) -> str:
        """Of its content."""
    @property
    def soak_kelvin(self) -> float:
        """Soak temperature [K]."""
    @property
    def soak_celsius(self) -> float:
        """Soak temperature [C]."""
    @property
    def coldest_kelvin(self) -> float:
        """Coldest temperature of the quench [K]."""
    @property
    def coldest_celsius(self) -> float:
        """Coldest temperature of the quench [C]."""
    @property
    def family(self) -> HardeningFamily:
        """The family that the estimates are made for."""
    @property
    def family_chosen(self) -> bool:
        """True: named by the caller; False: by composition."""
    @property
    def family_shares(self) -> dict[str, float]:
        """Share of each family, 0 to 1: more than one near a border."""
    @property
    def austenite(self) -> dict[str, float]:
        """Weight percents that the equations got."""
    @property
    def austenite_percent(self) -> float:
        """Austenite of the matrix, before the quench [vol%]."""
    @property
    def martensite_start(self) -> Estimate:
        """[C]"""
    @property
    def retained_austenite(self) -> Estimate:
        """[vol% of the steel]"""
    @property
    def retained_austenite_of_matrix(self) -> Estimate:
        """[vol% of the matrix]"""
    @property
    def hardness_hv(self) -> Estimate:
        """As quenched [HV]."""
    @property
    def hardness_hrc(self) -> Estimate:
        """As quenched [HRC]."""
    @property
    def grain_diameter(self) -> Estimate:
        """Austenite grain limit [um]."""
    @property
    def matrix_indices(self) -> TradeIndices:
        """Of all matrix phases together."""
    @property
    def steel_indices(self) -> TradeIndices:
        """Of the whole certificate."""
    @property
    def warnings(self) -> list[SoakWarning]:
        """What to know about these estimates."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

def _hardening(state: State, options: HardeningOptions) -> HardeningEstimates:
    """Estimates of what a quench from this state gives."""

def quantity_martensite_start(options: HardeningOptions) -> Quantity:
    """[C]"""

def quantity_retained_austenite(options: HardeningOptions) -> Quantity:
    """[vol% of the steel]"""

def quantity_retained_austenite_of_matrix(options: HardeningOptions) -> Quantity:
    """[vol% of all matrix phases together]: what X-rays see between large carbides"""

def quantity_hardness_hv(options: HardeningOptions) -> Quantity:
    """As quenched [HV]."""

def quantity_hardness_hrc(options: HardeningOptions) -> Quantity:
    """As quenched [HRC]."""

# bind_tolerance_parts.cpp

class TolerancedInput(_Compiled):
    """One thing that scatters: an element, the furnace or segregation."""

    @property
    def name(self) -> str:
        """An element, "temperature" or "segregation"."""
    @property
    def unit(self) -> str:
        """Unit of the numbers."""
    @property
    def nominal(self) -> float:
        """Of the steel, or as asked for."""
    @property
    def low(self) -> float:
        """End of the box: limit or two deviations."""
    @property
    def high(self) -> float:
        """End of the box: limit or two deviations."""
    @property
    def given_deviation(self) -> float:
        """Of the normal distribution given; 0 for a range."""
    @property
    def mean(self) -> float:
        """Of the distribution."""
    @property
    def standard_deviation(self) -> float:
        """Of the distribution."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class Contribution(_Compiled):
    """How much one input matters for one quantity."""

    @property
    def input(self) -> str:
        """Name of the input."""
    @property
    def slope(self) -> float:
        """Derivative; NaN when unknown."""
    @property
    def scatter(self) -> float:
        """Scatter that the input causes alone."""
    @property
    def share(self) -> float:
        """Of the first-order variance, 0 to 1."""
    @property
    def sampled_share(self) -> float:
        """Squared correlation over the samples, 0 to 1."""

class FirstOrderBand(_Compiled):
    """From the derivatives. NaN where unknown."""

    @property
    def mean(self) -> float: ...
    @property
    def standard_deviation(self) -> float: ...
    @property
    def lowest(self) -> float:
        """Over the box, if all were linear."""
    @property
    def highest(self) -> float:
        """Over the box, if all were linear."""
    @property
    def one_sided(self) -> bool:
        """True: a phase change is close by."""
    @property
    def remark(self) -> str:
        """Why one-sided or unknown; else empty."""

class SampledBand(_Compiled):
    """From the samples. NaN without any."""

    @property
    def count(self) -> int:
        """Samples that have this number."""
    @property
    def mean(self) -> float: ...
    @property
    def standard_deviation(self) -> float: ...
    @property
    def lowest(self) -> float:
        """Of the samples, not a bound."""
    @property
    def highest(self) -> float:
        """Of the samples, not a bound."""
    @property
    def percentiles(self) -> list[float]:
        """As ToleranceBand.percentiles."""

class WorstCorner(_Compiled):
    """Worst corner of the box that was found: a search, not a proof."""

    @property
    def value(self) -> float:
        """NaN when not searched."""
    @property
    def inputs(self) -> list[float]:
        """As ToleranceBand.inputs."""

class QuantityBand(_Compiled):
    """The band of one quantity."""

    @property
    def name(self) -> str: ...
    @property
    def unit(self) -> str: ...
    @property
    def label(self) -> str:
        """Name with the unit."""
    @property
    def nominal(self) -> float:
        """Of the nominal state."""
    @property
    def first_order(self) -> FirstOrderBand: ...
    @property
    def sampled(self) -> SampledBand: ...
    @property
    def lowest_corner(self) -> WorstCorner: ...
    @property
    def highest_corner(self) -> WorstCorner: ...
    @property
    def contributions(self) -> list[Contribution]:
        """As ToleranceBand.inputs."""

class PhaseShare(_Compiled):
    """How often a kind of phase is there."""

    @property
    def kind(self) -> str: ...
    @property
    def nominal(self) -> bool:
        """Present in the nominal state."""
    @property
    def share(self) -> float:
        """Of the usable samples, 0 to 1."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class UnusableSample(_Compiled):
    """A sample or corner that gave no result."""

    @property
    def inputs(self) -> list[float]:
        """As ToleranceBand.inputs."""
    @property
    def reason(self) -> str: ...
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

# bind_tolerance.cpp

class HeatTolerances(_Compiled):
    """What scatters."""

    def __init__(
        self,
        *,
        ranges: Sequence[tuple[str, float, float]],
        standard_deviations: dict[str, float],
        furnace_error: float,
        segregation_percent: float,
    ) -> None: ...

class ToleranceOptions(_Compiled):
    """Settings of a tolerance band."""

    def __init__(
        self,
        soak: SoakOptions,
        samples: int,
        seed: int,
        percentiles: Sequence[float],
        corners: bool,
        segregated_carbon: str,
        threads: int,
    ) -> None: ...

class ToleranceBand(_Compiled):
    """What scatter of heat, furnace and place does to a state."""

    def _repr_html_(self) -> str: ...
    @property
    def nominal(self) -> State:
        """The State of the steel as it is."""
    @property
    def inputs(self) -> list[TolerancedInput]:
        """What scatters."""
    @property
    def segregated_carbon(self) -> str:
        """What carbon does where the alloy content is segregated."""
    @property
    def percentiles(self) -> list[float]: ...
    @property
    def quantities(self) -> list[QuantityBand]: ...
    @property
    def phases(self) -> list[PhaseShare]:
        """How often each phase is there."""
    @property
    def samples_asked(self) -> int: ...
    @property
    def samples(self) -> int:
        """Soaked, the unusable ones included."""
    @property
    def corners(self) -> int:
        """Distinct corners soaked."""
    @property
    def cancelled(self) -> bool:
        """True: holds the part that is done."""
    @property
    def unusable(self) -> list[UnusableSample]:
        """Samples left out, with the reason."""
    @property
    def unusable_corners(self) -> list[UnusableSample]: ...
    @property
    def warnings(self) -> list[SoakWarning]: ...
    @property
    def usable(self) -> bool:
        """False: the nominal state is not usable, and nothing else was soaked."""
    @property
    def sample_inputs(self) -> _Array:
        """Array (samples, inputs), as drawn; units as `inputs`."""
    @property
    def sample_values(self) -> _Array:
        """Array (samples, quantities); NaN for an unusable sample."""
    def to_frame(self) -> pd.DataFrame:
        """Table of the band (pandas), one row per quantity."""
    def __getitem__(self, name: str) -> QuantityBand: ...
    def __len__(self) -> int: ...

def tolerance_band(
    steel: CompiledSteel,
    kelvin: float,
    tolerances: HeatTolerances,
    quantities: Sequence[Quantity],
    options: ToleranceOptions,
    progress: Callable[[int], object] | None,
) -> ToleranceBand:
    """See Steel.tolerance_band."""

def default_quantities(state: State) -> list[Quantity]:
    """What a tolerance band follows when nothing else is asked for."""

# bind_parameter_band.cpp

class ParameterBand(_Compiled):
    """What the stated uncertainty of the parameter file does to a state."""

    def _repr_html_(self) -> str: ...
    @property
    def nominal(self) -> State:
        """The State of the steel as it is."""
    @property
    def inputs(self) -> list[TolerancedInput]:
        """What scatters."""
    @property
    def percentiles(self) -> list[float]: ...
    @property
    def quantities(self) -> list[QuantityBand]: ...
    @property
    def phases(self) -> list[PhaseShare]:
        """How often each phase is there."""
    @property
    def samples_asked(self) -> int: ...
    @property
    def samples(self) -> int:
        """Soaked, the unusable ones included."""
    @property
    def cancelled(self) -> bool:
        """True: holds the part that is done."""
    @property
    def unusable(self) -> list[UnusableSample]:
        """Samples left out, with the reason."""
    @property
    def warnings(self) -> list[SoakWarning]: ...
    @property
    def usable(self) -> bool:
        """False: the nominal state is not usable, and nothing else was soaked."""
    @property
    def sample_inputs(self) -> _Array:
        """Array (samples, inputs), as drawn; units as `inputs`."""
    @property
    def sample_values(self) -> _Array:
        """Array (samples, quantities); NaN for an unusable sample."""
    def to_frame(self) -> pd.DataFrame:
        """Table of the band (pandas), one row per quantity."""
    def __getitem__(self, name: str) -> QuantityBand: ...
    def __len__(self) -> int: ...

def parameter_band(
    steel: CompiledSteel,
    kelvin: float,
    quantities: Sequence[Quantity],
    soak: SoakOptions,
    samples: int,
    seed: int,
    percentiles: Sequence[float],
    threads: int,
    progress: Callable[[int], object] | None,
) -> ParameterBand:
    """See Steel.parameter_band."""

# bind_soak_grid.cpp

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

class SectionOptions(_Compiled):
    """Settings of a section map."""

    def __init__(
        self,
        *,
        temperature_tolerance: float = ...,
        percent_tolerance: float = ...,
        columns: int = ...,
        rows: int = ...,
        most_soaks: int = ...,
        threads: int = ...,
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

class SectionAxis(_Compiled):
    """One axis of a section map."""

    @property
    def element(self) -> str:
        """Symbol; empty for an axis of temperature."""
    @property
    def low(self) -> float:
        """[`unit`]"""
    @property
    def high(self) -> float:
        """[`unit`]"""
    @property
    def unit(self) -> str:
        """``"wt%"`` or ``"C"``."""
    @property
    def label(self) -> str:
        """``"C [wt%]"``, ``"temperature [C]"``."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SectionBoundary(_Compiled):
    """A line between two fields."""

    @property
    def left(self) -> list[str]:
        """Phases on the left, walking along the points."""
    @property
    def right(self) -> list[str]:
        """Phases on the right."""
    @property
    def left_only(self) -> list[str]:
        """Phases that vanish to the right."""
    @property
    def right_only(self) -> list[str]:
        """Phases that vanish to the left."""
    @property
    def invariant(self) -> bool:
        """True: a reaction at one temperature."""
    @property
    def closed(self) -> bool:
        """True: the last point is the first."""
    @property
    def of_gap(self) -> bool:
        """True: nothing is known on one side."""
    @property
    def points(self) -> _Array:
        """Shape (n, 2), in the units of the axes."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SectionField(_Compiled):
    """A region with one set of phases."""

    @property
    def phases(self) -> list[str]:
        """Kinds; two of a kind are listed twice."""
    @property
    def label(self) -> str:
        """``"austenite + M3C"``."""
    @property
    def label_point(self) -> tuple[float, float]:
        """A point inside, as far from the outline as can be."""
    @property
    def label_room(self) -> float:
        """Its distance from the outline, as a share of the axes."""
    @property
    def area_share(self) -> float:
        """Of the map, 0 to 1."""
    @property
    def outline(self) -> _Array:
        """Shape (n, 2); closed, the first point is not repeated."""
    @property
    def holes(self) -> list[_Array]:
        """Outlines of the fields inside it."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SectionNode(_Compiled):
    """A point where boundaries meet."""

    @property
    def at(self) -> tuple[float, float]:
        """In the units of the axes."""
    @property
    def fields(self) -> list[str]:
        """Labels of the fields around it."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

class SectionGap(_Compiled):
    """A region of which nothing is known."""

    @property
    def outline(self) -> _Array:
        """Shape (n, 2); no phase boundary."""
    @property
    def reason(self) -> str:
        """Why nothing is known."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]

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

# bind_screen_table.cpp

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

# bind_screen.cpp

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

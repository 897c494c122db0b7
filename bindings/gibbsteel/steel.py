"""The steel: what the user starts from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from . import _core
from ._core import MillAnalysis, ParameterSet, SolveOptions, State, Sweep
from .bands import BandMethods
from .changed import ChangeMethods, parameter_set
from .composition import as_weight_percent
from .composition_for import CompositionSearchMethods
from .evidence import EvidenceMethods
from .html_inputs import steel_html
from .matrix_twin import MatrixTwinMethods
from .melting import MeltingMethods
from .parameters import default_parameters
from .pickles import pickle_mark, reading
from .progress import Callback, reporting
from .section import SectionMethods
from .sensitivities import SensitivityMethods
from .soak_grid import GridMethods
from .soak_options import soak_options
from .targets import TargetMethods
from .temperature import given_unit, many_kelvin, one_with_unit, refuse_without_unit
from .texts import name_text
from .window import WindowMethods


class Steel(
    BandMethods,
    ChangeMethods,
    CompositionSearchMethods,
    EvidenceMethods,
    GridMethods,
    MatrixTwinMethods,
    MeltingMethods,
    SectionMethods,
    SensitivityMethods,
    TargetMethods,
    WindowMethods,
):
    """A steel, given as a mill certificate in weight percent.

    Parameters
    ----------
    composition : mapping of str to float, optional
        Weight percent by element symbol; Fe is the balance and may be left out. A dict,
        a pandas Series, anything with ``items()``. A number may be a quantity with a
        unit, such as Pint's: a mass per mass. Elements that the parameter file
        does not model (P, S, N, Cu, ...) are kept in ``analysis.not_modelled``.
    name : str
        Shown in tables and reports.
    parameters : ParameterSet, optional
        `default_parameters` when left out.
    bind_tramp_elements : bool
        True: S ties up Mn as MnS, and N ties up Ti, Nb and V as nitride, atom for atom;
        not S or N that the parameter set models.
    **elements : float
        Weight percents as keywords instead of, or besides, the mapping.

    Raises
    ------
    InputError
        With every problem of the composition.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
    >>> state = steel.soak(celsius=1120)
    >>> list(state.carbides)
    ['M6C', 'MC']
    """

    def __init__(
        self,
        composition: Mapping[str, float] | None = None,
        *,
        name: str = "",
        parameters: ParameterSet | None = None,
        bind_tramp_elements: bool = False,
        **elements: float,
    ) -> None:
        self._core = _core.CompiledSteel(
            as_weight_percent(composition, elements),
            name_text(name),
            default_parameters() if parameters is None else parameter_set(parameters),
            bool(bind_tramp_elements),
        )

    @property
    def name(self) -> str:
        """Name of the steel; may be empty."""
        return self._core.name

    @property
    def analysis(self) -> MillAnalysis:
        """The mill certificate, sorted into modelled and not modelled."""
        return self._core.analysis

    @property
    def parameters(self) -> ParameterSet:
        """The parameter set in use."""
        return self._core.parameters

    @classmethod
    def _wrapped(cls, core: _core.CompiledSteel) -> Steel:
        steel = cls.__new__(cls)
        steel._core = core
        return steel

    def soak(
        self,
        *without_unit: Any,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        graphite: bool = False,
        phases: str | Sequence[str] | None = None,
        suppressed: str | Sequence[str] = (),
        at_soak_temperature: bool = False,
        certify: str | None = None,
        options: SolveOptions | None = None,
    ) -> State:
        """Equilibrium at one temperature: the long-hold limit of a soak.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : float
            Exactly one of them; a number, or a quantity with a unit such as Pint's.
        graphite : bool
            Allow graphite; it does not form in the times of a soak.
        phases : str or sequence of str, optional
            Candidate phases; all of the file when left out. Austenite and MC are one
            model: naming one allows both (likewise M2C and hexagonal matrix).
        suppressed : str or sequence of str
            Phases taken out of the candidates.
        at_soak_temperature : bool
            Volume percents at the soak temperature instead of room temperature, which
            is what metallography measures.
        certify : {"many starts", "proof"}, optional
            "proof" proves that no allowed phase lies below the tangent plane by more
            than 0.1 J/mol of atoms; see ``state.solve_report.proven_gap``. Some ten
            milliseconds for most steels, up to seconds for ten elements.
        options : SolveOptions, optional
            Settings of the minimizer.

        Returns
        -------
        State
            Look at ``state.usable`` and ``state.warnings``: trouble of the calculation
            is reported there and never raised.

        Raises
        ------
        InputError
            Temperature without or in a wrong unit, unknown phase.

        Examples
        --------
        >>> state = Steel(C=0.8).soak(fahrenheit=1292)
        >>> round(state.celsius), list(state.carbides)
        (700, ['M3C'])
        """
        refuse_without_unit(without_unit, "soak(celsius=1120)")
        at, unit = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        chosen = soak_options(
            graphite,
            phases,
            suppressed,
            at_soak_temperature,
            options,
            certify,
            unit=unit,
        )
        return self._core.soak(at, chosen)

    def sweep(
        self,
        *without_unit: Any,
        celsius: Iterable[Any] | None = None,
        fahrenheit: Iterable[Any] | None = None,
        kelvin: Iterable[Any] | None = None,
        progress: bool | Callback = False,
        graphite: bool = False,
        phases: str | Sequence[str] | None = None,
        suppressed: str | Sequence[str] = (),
        at_soak_temperature: bool = False,
        certify: str | None = None,
        prove_every: int = 1,
        options: SolveOptions | None = None,
    ) -> Sweep:
        """Many soaks, in the order given; equal to that many single soaks.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : iterable of float
            Exactly one of them, for instance ``range(900, 1231, 5)``. What is printed
            shows that unit beside C.
        progress : bool or callable
            True shows a bar (tqdm). A callable gets the number of soaks done and stops
            the sweep by returning False.
        prove_every : int
            With ``certify="proof"``: prove every so many-th soak and the last one.
            Those between get the certificate "covered": the proofs extend to them by
            concavity, with a wider gap of at most 5 J/mol of atoms. Where that cannot
            be shown (far apart, phase change between) they are proven too.

        The other parameters are those of `soak`. Ctrl-C, or Stop in a notebook, ends
        the sweep early: ``sweep.cancelled`` is then True and ``sweep.states`` holds
        what is done.

        Returns
        -------
        Sweep
            One state per temperature; ``sweep.warnings`` holds those of all states.

        Raises
        ------
        InputError
            As for `soak`, with every temperature that is outside what makes sense.

        Examples
        --------
        >>> sweep = Steel(C=0.8).sweep(celsius=[650, 700])
        >>> len(sweep), sweep.carbide_kinds
        (2, ['M3C'])
        """
        refuse_without_unit(without_unit, "sweep(celsius=range(900, 1231, 5))")
        chosen = soak_options(
            graphite,
            phases,
            suppressed,
            at_soak_temperature,
            options,
            certify,
            prove_every,
            unit=given_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin),
        )
        at = many_kelvin(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        with reporting(progress, len(at)) as callback:
            return self._core.sweep(at, chosen, callback)

    def __repr__(self) -> str:
        return f"<{self._core.brief()}>"

    def _repr_html_(self) -> str:
        return steel_html(self)

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Steel):
            return NotImplemented
        return (
            self.name == other.name
            and self._core.binds_tramp_elements == other._core.binds_tramp_elements
            and self.analysis == other.analysis
            and self.parameters == other.parameters
        )

    def __reduce__(self) -> tuple[Any, ...]:
        bind = self._core.binds_tramp_elements
        fields = (self.analysis.given, self.name, self.parameters, bind)
        return restore, (pickle_mark("Steel"), *fields)


def restore(mark: object, *fields: Any) -> Steel:
    """A pickled steel."""
    with reading(mark, "Steel"):
        given, name, parameters, bind = fields
        return Steel(given, name=name, parameters=parameters, bind_tramp_elements=bind)

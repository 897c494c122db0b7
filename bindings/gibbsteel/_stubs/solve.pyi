"""bind_solve.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Compiled

class SolveOptions(_Compiled):
    """Settings of the minimizer."""

    def __init__(
        self,
        *,
        max_rounds: int = 30,
        max_newton_steps: int = 200,
        starts_per_phase: int = 20,
        balance_tolerance: float = 1e-11,
        stability_tolerance: float = 0.001,
        certify: str = "many starts",
        proof_gap: float = 0.1,
        proof_boxes: int = 1000000,
        proof_seconds: float = 10.0,
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

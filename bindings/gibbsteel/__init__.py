"""Carbides and matrix composition of tool steels at the soaking temperature.

>>> import gibbsteel as gs
>>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
>>> state = steel.soak(celsius=1120)

``state.carbides``, ``state.matrix`` and ``state.carbide_volume_percent`` are the
answer; ``state.usable`` and ``state.warnings`` say how far to trust it. Results are the
long-hold limit (true equilibrium); shop soaks are minutes.
"""

from . import measured_carbide as _measured_carbide  # adds a method to State
from . import phase_model as _phase_model  # adds methods to PhaseModel
from . import quantities
from ._core import (
    BoundCompound,
    CarbideInBalance,
    Comparison,
    ComparisonRow,
    CompositionCrossing,
    CompositionSearch,
    Constituent,
    Design,
    DesignTarget,
    Equilibrium,
    Input,
    MakeableSteps,
    Matrix,
    MatrixBand,
    MeasuredCarbide,
    MillAnalysis,
    Occurrence,
    ParameterSet,
    PhaseDerivatives,
    PhaseModel,
    Problem,
    Quantity,
    Sensitivities,
    ShortSoak,
    SoakWarning,
    SolveOptions,
    SolveReport,
    State,
    StateSlope,
    Sweep,
    TargetOutcome,
    TwinStudy,
    build_info,
)
from .comparison import compare
from .design import design, matrix_targets, target
from .errors import DataError, GibbsteelError, InputError
from .minimizer import minimize
from .parameters import (
    content_hash,
    default_parameters,
    load_parameters,
    write_parameters,
)
from .steel import Steel

__version__: str = build_info()["version"]

__all__ = [
    "BoundCompound",
    "CarbideInBalance",
    "Comparison",
    "ComparisonRow",
    "CompositionCrossing",
    "CompositionSearch",
    "Constituent",
    "DataError",
    "Design",
    "DesignTarget",
    "Equilibrium",
    "GibbsteelError",
    "Input",
    "InputError",
    "MakeableSteps",
    "Matrix",
    "MatrixBand",
    "MeasuredCarbide",
    "MillAnalysis",
    "Occurrence",
    "ParameterSet",
    "PhaseDerivatives",
    "PhaseModel",
    "Problem",
    "Quantity",
    "Sensitivities",
    "ShortSoak",
    "SoakWarning",
    "SolveOptions",
    "SolveReport",
    "State",
    "StateSlope",
    "Steel",
    "Sweep",
    "TargetOutcome",
    "TwinStudy",
    "build_info",
    "compare",
    "content_hash",
    "default_parameters",
    "design",
    "load_parameters",
    "matrix_targets",
    "minimize",
    "quantities",
    "target",
    "write_parameters",
]

del _measured_carbide, _phase_model

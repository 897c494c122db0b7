"""Carbides and matrix composition of tool steels at the soaking temperature.

>>> import gibbsteel as gs
>>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
>>> state = steel.soak(celsius=1120)

``state.carbides``, ``state.matrix`` and ``state.carbide_volume_percent`` are the
answer; ``state.usable`` and ``state.warnings`` say how far to trust it. Results are the
long-hold limit (true equilibrium); shop soaks are minutes.
"""

from . import phase_model as _phase_model  # adds methods to PhaseModel
from . import plot, quantities
from ._core import (
    BoundCompound,
    Constituent,
    Contribution,
    Equilibrium,
    FirstOrderBand,
    Input,
    Matrix,
    MillAnalysis,
    Occurrence,
    ParameterSet,
    PhaseDerivatives,
    PhaseModel,
    PhaseShare,
    Problem,
    Quantity,
    QuantityBand,
    SampledBand,
    SectionAxis,
    SectionBoundary,
    SectionField,
    SectionGap,
    SectionMap,
    SectionNode,
    SectionOptions,
    Sensitivities,
    SoakGrid,
    SoakWarning,
    SolveOptions,
    SolveReport,
    State,
    StateSlope,
    Sweep,
    SweptVariable,
    ToleranceBand,
    TolerancedInput,
    UnusableSample,
    WorstCorner,
    build_info,
)
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
    "Constituent",
    "Contribution",
    "DataError",
    "Equilibrium",
    "FirstOrderBand",
    "GibbsteelError",
    "Input",
    "InputError",
    "Matrix",
    "MillAnalysis",
    "Occurrence",
    "ParameterSet",
    "PhaseDerivatives",
    "PhaseModel",
    "PhaseShare",
    "Problem",
    "Quantity",
    "QuantityBand",
    "SampledBand",
    "SectionAxis",
    "SectionBoundary",
    "SectionField",
    "SectionGap",
    "SectionMap",
    "SectionNode",
    "SectionOptions",
    "Sensitivities",
    "SoakGrid",
    "SoakWarning",
    "SolveOptions",
    "SolveReport",
    "State",
    "StateSlope",
    "Steel",
    "Sweep",
    "SweptVariable",
    "ToleranceBand",
    "TolerancedInput",
    "UnusableSample",
    "WorstCorner",
    "build_info",
    "content_hash",
    "default_parameters",
    "load_parameters",
    "minimize",
    "plot",
    "quantities",
    "write_parameters",
]

del _phase_model

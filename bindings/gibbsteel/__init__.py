"""Carbides and matrix composition of tool steels at the soaking temperature.

>>> import gibbsteel as gs
>>> steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
>>> state = steel.soak(celsius=1120)

``state.carbides``, ``state.matrix`` and ``state.carbide_volume_percent`` are the
answer; ``state.usable`` and ``state.warnings`` say how far to trust it. Results are the
long-hold limit (true equilibrium); shop soaks are minutes.
"""

from . import _core
from . import phase_model as _phase_model  # adds methods to PhaseModel
from . import quantities
from ._core import (
    BoundCompound,
    Constituent,
    Equilibrium,
    Input,
    Matrix,
    MillAnalysis,
    Occurrence,
    ParameterSet,
    PhaseDerivatives,
    PhaseModel,
    Problem,
    Quantity,
    Report,
    ReportSection,
    Sensitivities,
    SoakWarning,
    SolveOptions,
    SolveReport,
    State,
    StateSlope,
    Sweep,
)
from .build import build_info
from .display import attach as _attach
from .errors import DataError, GibbsteelError, InputError
from .minimizer import minimize
from .parameters import (
    content_hash,
    default_parameters,
    load_parameters,
    parameter_files,
    write_parameters,
)
from .steel import Steel
from .warn import GibbsteelWarning, NotUsableWarning, OutsideValidityWarning

__version__: str = _core.version

__all__ = [
    "BoundCompound",
    "Constituent",
    "DataError",
    "Equilibrium",
    "GibbsteelError",
    "GibbsteelWarning",
    "Input",
    "InputError",
    "Matrix",
    "MillAnalysis",
    "NotUsableWarning",
    "Occurrence",
    "OutsideValidityWarning",
    "ParameterSet",
    "PhaseDerivatives",
    "PhaseModel",
    "Problem",
    "Quantity",
    "Report",
    "ReportSection",
    "Sensitivities",
    "SoakWarning",
    "SolveOptions",
    "SolveReport",
    "State",
    "StateSlope",
    "Steel",
    "Sweep",
    "build_info",
    "content_hash",
    "default_parameters",
    "load_parameters",
    "minimize",
    "parameter_files",
    "quantities",
    "write_parameters",
]

_attach()
del _attach, _phase_model

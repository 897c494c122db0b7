"""Types of the compiled module; bindings/bind_*.cpp is the source of each class.

Everything here is read-only. Units and meaning are those of the C++ headers in
include/gibbsteel/. The parts lie in _stubs/, one for each bind_*.cpp. test_types.py
compares them with the built module.
"""

from ._stubs.analysis import BoundCompound as BoundCompound
from ._stubs.analysis import MillAnalysis as MillAnalysis
from ._stubs.build_info import _BuildInfo as _BuildInfo
from ._stubs.build_info import build_info as build_info
from ._stubs.build_info import version as version
from ._stubs.calibration import Calibration as Calibration
from ._stubs.calibration import calibrate as calibrate
from ._stubs.calibration import stated_numbers as stated_numbers
from ._stubs.calibration_parts import CalibratedNumber as CalibratedNumber
from ._stubs.calibration_parts import LeftOutSteel as LeftOutSteel
from ._stubs.calibration_parts import Measurement as Measurement
from ._stubs.calibration_parts import PublishedCheck as PublishedCheck
from ._stubs.calibration_parts import SeenDirection as SeenDirection
from ._stubs.comparison import Comparison as Comparison
from ._stubs.comparison import ComparisonRow as ComparisonRow
from ._stubs.comparison import compare as compare
from ._stubs.compiled import _Compiled as _Compiled
from ._stubs.composition_for import CompositionCrossing as CompositionCrossing
from ._stubs.composition_for import CompositionSearch as CompositionSearch
from ._stubs.composition_for import composition_for as composition_for
from ._stubs.design import Design as Design
from ._stubs.design import DesignTarget as DesignTarget
from ._stubs.design import TargetOutcome as TargetOutcome
from ._stubs.design import design as design
from ._stubs.design import matrix_targets as matrix_targets
from ._stubs.dissolution import Dissolution as Dissolution
from ._stubs.dissolution import dissolution_temperature as dissolution_temperature
from ._stubs.equilibrium import Equilibrium as Equilibrium
from ._stubs.equilibrium import _PhasePoint as _PhasePoint
from ._stubs.equilibrium import minimize as minimize
from ._stubs.errors import Problem as Problem
from ._stubs.estimate import Estimate as Estimate
from ._stubs.estimate import HardeningFamily as HardeningFamily
from ._stubs.estimate import TradeIndices as TradeIndices
from ._stubs.estimate import carbide_hardness as carbide_hardness
from ._stubs.estimate import hardening_families as hardening_families
from ._stubs.estimate import hrc_from_hv as hrc_from_hv
from ._stubs.estimate import hv_from_hrc as hv_from_hrc
from ._stubs.estimate import mixture_hardness as mixture_hardness
from ._stubs.estimate import quenched_hardness as quenched_hardness
from ._stubs.estimate import trade_indices as trade_indices
from ._stubs.evidence import Evidence as Evidence
from ._stubs.evidence import EvidenceRow as EvidenceRow
from ._stubs.evidence import RecordedMeasurement as RecordedMeasurement
from ._stubs.evidence import evidence as evidence
from ._stubs.evidence import load_measurements as load_measurements
from ._stubs.evidence import own_measurement as own_measurement
from ._stubs.evidence import published_measurements as published_measurements
from ._stubs.hardening import HardeningEstimates as HardeningEstimates
from ._stubs.hardening import HardeningOptions as HardeningOptions
from ._stubs.hardening import _hardening as _hardening
from ._stubs.hardening import quantity_grain_limit as quantity_grain_limit
from ._stubs.hardening import quantity_hardness_hrc as quantity_hardness_hrc
from ._stubs.hardening import quantity_hardness_hv as quantity_hardness_hv
from ._stubs.hardening import quantity_martensite_start as quantity_martensite_start
from ._stubs.hardening import quantity_retained_austenite as quantity_retained_austenite
from ._stubs.hardening import (
    quantity_retained_austenite_of_matrix as quantity_retained_austenite_of_matrix,
)
from ._stubs.hardening_window import HardeningWindow as HardeningWindow
from ._stubs.hardening_window import RuleSpans as RuleSpans
from ._stubs.hardening_window import WindowRules as WindowRules
from ._stubs.hardening_window import WindowSpan as WindowSpan
from ._stubs.hardening_window import hardening_window as hardening_window
from ._stubs.matching_temperature import MatchingTemperature as MatchingTemperature
from ._stubs.matching_temperature import matching_temperature as matching_temperature
from ._stubs.matrix_twin import MakeableSteps as MakeableSteps
from ._stubs.matrix_twin import TwinStudy as TwinStudy
from ._stubs.matrix_twin import matrix_twin as matrix_twin
from ._stubs.matrix_twin import matrix_twin_at as matrix_twin_at
from ._stubs.matrix_twin import twin_study as twin_study
from ._stubs.measured_carbide import CarbideInBalance as CarbideInBalance
from ._stubs.measured_carbide import MatrixBand as MatrixBand
from ._stubs.measured_carbide import MeasuredCarbide as MeasuredCarbide
from ._stubs.measured_carbide import ShortSoak as ShortSoak
from ._stubs.measured_carbide import (
    quantity_short_soak_matrix as quantity_short_soak_matrix,
)
from ._stubs.measured_carbide import short_soak_limit as short_soak_limit
from ._stubs.measured_carbide import with_measured_carbide as with_measured_carbide
from ._stubs.measurement_outcome import MeasurementOutcome as MeasurementOutcome
from ._stubs.melting import MeltingRange as MeltingRange
from ._stubs.melting import melting_range as melting_range
from ._stubs.melting import melting_search_range as melting_search_range
from ._stubs.occurrence import Occurrence as Occurrence
from ._stubs.parameter_band import ParameterBand as ParameterBand
from ._stubs.parameter_band import parameter_band as parameter_band
from ._stubs.parameters import ParameterSet as ParameterSet
from ._stubs.parameters import default_parameters as default_parameters
from ._stubs.parameters import load_parameters as load_parameters
from ._stubs.parameters import parse_parameters as parse_parameters
from ._stubs.parameters import sources_page as sources_page
from ._stubs.parameters import write_parameters as write_parameters
from ._stubs.phase_changes import PhaseChange as PhaseChange
from ._stubs.phase_changes import PhaseChanges as PhaseChanges
from ._stubs.phase_changes import TransformationLimit as TransformationLimit
from ._stubs.phase_changes import phase_changes as phase_changes
from ._stubs.phase_model import Constituent as Constituent
from ._stubs.phase_model import PhaseDerivatives as PhaseDerivatives
from ._stubs.phase_model import PhaseModel as PhaseModel
from ._stubs.pickling import _check_pickle_mark as _check_pickle_mark
from ._stubs.pickling import _pickle_mark as _pickle_mark
from ._stubs.pickling import _refuse_damaged_pickle as _refuse_damaged_pickle
from ._stubs.property_equations import PropertyEquation as PropertyEquation
from ._stubs.property_equations import PropertyEquations as PropertyEquations
from ._stubs.property_equations import PropertyInput as PropertyInput
from ._stubs.property_equations import PropertySlope as PropertySlope
from ._stubs.quantity import Quantity as Quantity
from ._stubs.quantity import (
    quantity_carbide_mass_percent as quantity_carbide_mass_percent,
)
from ._stubs.quantity import (
    quantity_carbide_volume_percent as quantity_carbide_volume_percent,
)
from ._stubs.quantity import quantity_carbon_activity as quantity_carbon_activity
from ._stubs.quantity import quantity_driving_force as quantity_driving_force
from ._stubs.quantity import quantity_in_carbides as quantity_in_carbides
from ._stubs.quantity import quantity_in_phase as quantity_in_phase
from ._stubs.quantity import quantity_mass_percent as quantity_mass_percent
from ._stubs.quantity import quantity_matrix as quantity_matrix
from ._stubs.quantity import quantity_volume_percent as quantity_volume_percent
from ._stubs.report import Report as Report
from ._stubs.report import ReportSection as ReportSection
from ._stubs.report import estimates_provenance as estimates_provenance
from ._stubs.report import long_hold_provenance as long_hold_provenance
from ._stubs.report import provenance as provenance
from ._stubs.report import state_flag as state_flag
from ._stubs.report import state_report as state_report
from ._stubs.report import state_title as state_title
from ._stubs.report import sweep_flag as sweep_flag
from ._stubs.report import sweep_report as sweep_report
from ._stubs.screen import SCREEN_BLOCK_ROWS as SCREEN_BLOCK_ROWS
from ._stubs.screen import ScreenInput as ScreenInput
from ._stubs.screen import ScreenOptions as ScreenOptions
from ._stubs.screen import run_screen as run_screen
from ._stubs.screen_table import ScreenTable as ScreenTable
from ._stubs.screen_table import join_screens as join_screens
from ._stubs.search_options import PhaseField as PhaseField
from ._stubs.search_options import PhaseGap as PhaseGap
from ._stubs.search_options import SearchOptions as SearchOptions
from ._stubs.search_options import usual_range as usual_range
from ._stubs.section_map import SectionMap as SectionMap
from ._stubs.section_map import SectionOptions as SectionOptions
from ._stubs.section_map import section_over_elements as section_over_elements
from ._stubs.section_map import section_over_temperature as section_over_temperature
from ._stubs.section_parts import SectionAxis as SectionAxis
from ._stubs.section_parts import SectionBoundary as SectionBoundary
from ._stubs.section_parts import SectionField as SectionField
from ._stubs.section_parts import SectionGap as SectionGap
from ._stubs.section_parts import SectionNode as SectionNode
from ._stubs.sensitivities import Sensitivities as Sensitivities
from ._stubs.sensitivities import sensitivities as sensitivities
from ._stubs.soak_grid import SoakGrid as SoakGrid
from ._stubs.soak_grid import SweptVariable as SweptVariable
from ._stubs.soak_grid import soak_grid as soak_grid
from ._stubs.solve import SolveOptions as SolveOptions
from ._stubs.solve import SolveReport as SolveReport
from ._stubs.state import Matrix as Matrix
from ._stubs.state import SoakWarning as SoakWarning
from ._stubs.state import State as State
from ._stubs.state import element_problem as element_problem
from ._stubs.state_slope import Input as Input
from ._stubs.state_slope import StateSlope as StateSlope
from ._stubs.steel import CompiledSteel as CompiledSteel
from ._stubs.steel import SoakOptions as SoakOptions
from ._stubs.sweep import Sweep as Sweep
from ._stubs.temperature_search import Crossing as Crossing
from ._stubs.temperature_search import TemperatureSearch as TemperatureSearch
from ._stubs.temperature_search import temperature_for as temperature_for
from ._stubs.timed_soak import MinutesFor as MinutesFor
from ._stubs.timed_soak import (
    default_particle_micrometres as default_particle_micrometres,
)
from ._stubs.timed_soak import minutes_for as minutes_for
from ._stubs.timed_soak import quantity_after_minutes as quantity_after_minutes
from ._stubs.timed_soak import quantity_timed_soak_matrix as quantity_timed_soak_matrix
from ._stubs.timed_soak import timed_soaks as timed_soaks
from ._stubs.tolerance import HeatTolerances as HeatTolerances
from ._stubs.tolerance import ToleranceBand as ToleranceBand
from ._stubs.tolerance import ToleranceOptions as ToleranceOptions
from ._stubs.tolerance import default_quantities as default_quantities
from ._stubs.tolerance import tolerance_band as tolerance_band
from ._stubs.tolerance_parts import Contribution as Contribution
from ._stubs.tolerance_parts import FirstOrderBand as FirstOrderBand
from ._stubs.tolerance_parts import PhaseShare as PhaseShare
from ._stubs.tolerance_parts import QuantityBand as QuantityBand
from ._stubs.tolerance_parts import SampledBand as SampledBand
from ._stubs.tolerance_parts import TolerancedInput as TolerancedInput
from ._stubs.tolerance_parts import UnusableSample as UnusableSample
from ._stubs.tolerance_parts import WorstCorner as WorstCorner

/// The compiled module gibbsteel._core. Users import gibbsteel; see README.md here.

#include "common.hpp"

namespace gibbsteel::python {
namespace {

/// What is built on a soak.
void bind_results(py::module_& m) {
  bind_search_options(m);
  bind_phase_changes(m);
  bind_dissolution(m);
  bind_melting(m);
  bind_temperature_search(m);
  bind_matching_temperature(m);
  bind_hardening_window(m);
  bind_state_slope(m);
  bind_quantity(m);
  bind_sweep(m);
  bind_steel(m);
  bind_tolerance_parts(m);
  bind_tolerance(m);
  bind_parameter_band(m);
  bind_calibration_parts(m);
  bind_measurement_outcome(m);
  bind_calibration(m);
  bind_evidence(m);
  bind_matrix_twin(m);
  bind_comparison(m);
  bind_measured_carbide(m);
  bind_timed_soak(m);
  bind_composition_for(m);
  bind_design(m);
  bind_report(m);
  bind_build_info(m);
  bind_sensitivities(m);
  bind_soak_grid(m);
  bind_screen_table(m);
  bind_screen(m);
  bind_estimate(m);
  bind_property_equations(m);
  bind_hardening(m);
  bind_section_parts(m);
  bind_section_map(m);
}

}  // namespace
}  // namespace gibbsteel::python

PYBIND11_MODULE(_core, m) {
  using namespace gibbsteel::python;
  py::options options;
  options.disable_function_signatures();
  m.doc() = "Compiled core of gibbsteel.";
  bind_errors(m);
  bind_pickling(m);
  bind_analysis(m);
  bind_occurrence(m);
  bind_parameters(m);
  bind_phase_model(m);
  bind_solve(m);
  bind_equilibrium(m);
  bind_state(m);
  bind_results(m);
  bind_signatures(m);
}

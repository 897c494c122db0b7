#pragma once
/// What every binding file shares: conversions and the declarations of all bind_*().

#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include "gibbsteel/named_values.hpp"

namespace gibbsteel::python {

namespace py = pybind11;

void bind_errors(py::module_& m);
void bind_pickling(py::module_& m);
void bind_parameters(py::module_& m);
void bind_phase_model(py::module_& m);
void bind_solve(py::module_& m);
void bind_equilibrium(py::module_& m);
void bind_occurrence(py::module_& m);
void bind_analysis(py::module_& m);
void bind_state(py::module_& m);
void bind_search_options(py::module_& m);
void bind_phase_changes(py::module_& m);
void bind_dissolution(py::module_& m);
void bind_melting(py::module_& m);
void bind_temperature_search(py::module_& m);
void bind_matching_temperature(py::module_& m);
void bind_hardening_window(py::module_& m);
void bind_state_slope(py::module_& m);
void bind_quantity(py::module_& m);
void bind_sweep(py::module_& m);
void bind_steel(py::module_& m);
void bind_tolerance_parts(py::module_& m);
void bind_tolerance(py::module_& m);
void bind_parameter_band(py::module_& m);
void bind_calibration_parts(py::module_& m);
void bind_measurement_outcome(py::module_& m);
void bind_calibration(py::module_& m);
void bind_evidence(py::module_& m);
void bind_matrix_twin(py::module_& m);
void bind_comparison(py::module_& m);
void bind_measured_carbide(py::module_& m);
void bind_timed_soak(py::module_& m);
void bind_composition_for(py::module_& m);
void bind_design(py::module_& m);
void bind_report(py::module_& m);
void bind_build_info(py::module_& m);
void bind_sensitivities(py::module_& m);
void bind_soak_grid(py::module_& m);
void bind_screen_table(py::module_& m);
void bind_screen(py::module_& m);
void bind_estimate(py::module_& m);
void bind_property_equations(py::module_& m);
void bind_hardening(py::module_& m);
void bind_section_parts(py::module_& m);
void bind_section_map(py::module_& m);
void bind_signatures(const py::module_& m);

}  // namespace gibbsteel::python

namespace pybind11::detail {

/// NamedValues <-> dict[str, float], order kept.
template <>
struct type_caster<gibbsteel::NamedValues> {
  PYBIND11_TYPE_CASTER(gibbsteel::NamedValues, const_name("dict[str, float]"));

  bool load(handle source, bool) {
    if (!isinstance<dict>(source)) return false;
    for (const auto& [key, number] : reinterpret_borrow<dict>(source)) {
      if (!isinstance<str>(key)) return false;
      value.set(key.cast<std::string>(), number.cast<double>());
    }
    return true;
  }

  static handle cast(const gibbsteel::NamedValues& values, return_value_policy,
                     handle) {
    dict result;
    for (const auto& [key, number] : values) result[str(key)] = number;
    return result.release();
  }
};

}  // namespace pybind11::detail

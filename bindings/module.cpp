/// The compiled module gibbsteel._core. Users import gibbsteel; see README.md here.

#include "common.hpp"
#include "gibbsteel/version.hpp"

PYBIND11_MODULE(_core, m) {
  using namespace gibbsteel::python;
  py::options options;
  options.disable_function_signatures();
  m.doc() = "Compiled core of gibbsteel.";
  bind_errors(m);
  bind_analysis(m);
  bind_occurrence(m);
  bind_parameters(m);
  bind_phase_model(m);
  bind_solve(m);
  bind_equilibrium(m);
  bind_state(m);
  bind_state_slope(m);
  bind_quantity(m);
  bind_sweep(m);
  bind_steel(m);
  bind_report(m);
  bind_build_info(m);
  bind_sensitivities(m);
}

/// Soaks of so many minutes: gibbsteel/timed_soak.hpp.

#include "common.hpp"
#include "gibbsteel/timed_soak.hpp"

namespace gibbsteel::python {
namespace {

using Holder = std::shared_ptr<ParameterSet>;

TimedSoakOptions options_of(double particle_micrometres,
                            std::optional<double> annealed_kelvin,
                            const Holder& parameters) {
  TimedSoakOptions options;
  options.particle_micrometres = particle_micrometres;
  if (annealed_kelvin)
    options.annealed.annealed_at = Temperature::kelvin(*annealed_kelvin);
  options.annealed.parameters = parameters;
  return options;
}

std::vector<ShortSoak> run(const State& state, const std::vector<double>& minutes,
                           double particle_micrometres,
                           std::optional<double> annealed_kelvin,
                           const Holder& parameters) {
  const auto options = options_of(particle_micrometres, annealed_kelvin, parameters);
  const py::gil_scoped_release release;
  return timed_soaks(state, minutes, options);
}

Quantity quantity(const std::string& element, double minutes,
                  double particle_micrometres, std::optional<double> annealed_kelvin,
                  const Holder& parameters) {
  return quantities::timed_soak_matrix(
      element, minutes, options_of(particle_micrometres, annealed_kelvin, parameters));
}

}  // namespace

void bind_timed_soak(py::module_& m) {
  m.def("timed_soaks", &run, py::arg("state"), py::arg("minutes"),
        py::arg("particle_micrometres"), py::arg("annealed_kelvin"),
        py::arg("parameters"));
  m.def("quantity_timed_soak_matrix", &quantity, py::arg("element"), py::arg("minutes"),
        py::arg("particle_micrometres"), py::arg("annealed_kelvin"),
        py::arg("parameters"));
}

}  // namespace gibbsteel::python

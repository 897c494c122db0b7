/// Soaks of so many minutes: gibbsteel/timed_soak.hpp, minutes_for.hpp.

#include "common.hpp"
#include "gibbsteel/minutes_for.hpp"
#include "pickling.hpp"

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

Quantity quantity_after(const Quantity& of, double minutes, double particle_micrometres,
                        std::optional<double> annealed_kelvin,
                        const Holder& parameters) {
  return quantities::after_minutes(
      of, minutes, options_of(particle_micrometres, annealed_kelvin, parameters));
}

MinutesFor search(const State& state, const std::string& element, double weight_percent,
                  double particle_micrometres, std::optional<double> annealed_kelvin,
                  const Holder& parameters) {
  const auto options = options_of(particle_micrometres, annealed_kelvin, parameters);
  const py::gil_scoped_release release;
  return minutes_for(state, element, weight_percent, options);
}

py::tuple minutes_state(const MinutesFor& f) {
  return py::make_tuple(static_cast<int>(f.status), f.minutes, f.at_first, f.at_last,
                        f.text, f.low_minutes, f.high_minutes);
}

/// Format 2 has the ends of the range; before, they were in the text alone.
MinutesFor minutes_from(const py::tuple& t, int format) {
  MinutesFor found{enumerator(t[0], MinutesStatus::too_long), t[1].cast<double>(),
                   t[2].cast<double>(), t[3].cast<double>(), t[4].cast<std::string>()};
  if (format >= 2) {
    found.low_minutes = t[5].cast<double>();
    found.high_minutes = t[6].cast<double>();
  }
  return found;
}

void bind_minutes(py::module_& m) {
  py::class_<MinutesFor>(m, "MinutesFor",
                         "How long until the matrix holds so much of an element.")
      .def_property_readonly(
          "status",
          [](const MinutesFor& f) { return std::string(to_string(f.status)); },
          "'found', 'at once', 'never reached' or 'too long'.")
      .def_readonly("minutes", &MinutesFor::minutes,
                    "At temperature; 0 at once, NaN when not found.")
      .def_readonly("low_minutes", &MinutesFor::low_minutes,
                    "A third of them, as far as size and diffusion are known.")
      .def_readonly("high_minutes", &MinutesFor::high_minutes,
                    "Three times them, as far as size and diffusion are known.")
      .def_readonly("at_first", &MinutesFor::at_first,
                    "Of the element in the matrix by the short-soak limit [wt%].")
      .def_readonly("at_last", &MinutesFor::at_last, "At the end [wt%].")
      .def_readonly("text", &MinutesFor::text, "One sentence.")
      .def("__str__", [](const MinutesFor& f) { return f.text; })
      .def("__repr__", [](const MinutesFor& f) { return "<" + f.text + ">"; })
      .def(tagged_pickle(&minutes_state, &minutes_from, 2));
}

}  // namespace

void bind_timed_soak(py::module_& m) {
  bind_minutes(m);
  m.attr("default_particle_micrometres") = TimedSoakOptions{}.particle_micrometres;
  m.def("minutes_for", &search, py::arg("state"), py::arg("element"),
        py::arg("weight_percent"), py::arg("particle_micrometres"),
        py::arg("annealed_kelvin"), py::arg("parameters"));
  m.def("timed_soaks", &run, py::arg("state"), py::arg("minutes"),
        py::arg("particle_micrometres"), py::arg("annealed_kelvin"),
        py::arg("parameters"));
  m.def("quantity_timed_soak_matrix", &quantity, py::arg("element"), py::arg("minutes"),
        py::arg("particle_micrometres"), py::arg("annealed_kelvin"),
        py::arg("parameters"));
  m.def("quantity_after_minutes", &quantity_after, py::arg("quantity"),
        py::arg("minutes"), py::arg("particle_micrometres"), py::arg("annealed_kelvin"),
        py::arg("parameters"));
}

}  // namespace gibbsteel::python

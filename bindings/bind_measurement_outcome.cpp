/// How a measurement came out of a calibration.

#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/calibrate.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

using Outcome = MeasurementOutcome;

py::tuple get_state(const Outcome& o) {
  return py::make_tuple(o.steel, o.record, o.quantity, o.unit,
                        o.temperature.in_kelvin(), o.value, o.uncertainty, o.held_back,
                        o.before, o.after, o.residual_before, o.residual_after,
                        o.residual_left_out, o.weight, o.left_out, o.reason);
}

Outcome set_state(const py::tuple& t) {
  Outcome o;
  o.steel = t[0].cast<std::string>();
  o.record = t[1].cast<std::string>();
  o.quantity = t[2].cast<std::string>();
  o.unit = t[3].cast<std::string>();
  o.temperature = Temperature::kelvin(t[4].cast<double>());
  o.value = t[5].cast<double>();
  o.uncertainty = t[6].cast<double>();
  o.held_back = t[7].cast<bool>();
  o.before = t[8].cast<double>();
  o.after = t[9].cast<double>();
  o.residual_before = t[10].cast<double>();
  o.residual_after = t[11].cast<double>();
  o.residual_left_out = t[12].cast<double>();
  o.weight = t[13].cast<double>();
  o.left_out = t[14].cast<std::size_t>();
  o.reason = t[15].cast<std::string>();
  return o;
}

std::string text_of(const Outcome& o) {
  const py::str text = py::str("<MeasurementOutcome {}, {}: miss {:.2f} to {:.2f}{}>")
                           .format(o.steel, o.quantity, o.residual_before,
                                   o.residual_after, o.held_back ? ", held back" : "");
  return text;
}

}  // namespace

void bind_measurement_outcome(py::module_& m) {
  py::class_<Outcome>(m, "MeasurementOutcome",
                      "A measurement before and after a calibration.")
      .def_readonly("steel", &Outcome::steel, "Its name.")
      .def_readonly("record", &Outcome::record, "Where it is published.")
      .def_readonly("quantity", &Outcome::quantity, "Name of the quantity.")
      .def_readonly("unit", &Outcome::unit, "Of the quantity.")
      .def_property_readonly(
          "celsius", [](const Outcome& o) { return celsius_of(o.temperature); }, "[C]")
      .def_readonly("value", &Outcome::value, "Measured.")
      .def_readonly("uncertainty", &Outcome::uncertainty, "One standard deviation.")
      .def_readonly("held_back", &Outcome::held_back, "Not fitted to.")
      .def_readonly("before", &Outcome::before,
                    "Computed with the file; NaN where it cannot be.")
      .def_readonly("after", &Outcome::after, "Computed with the layer.")
      .def_readonly("residual_before", &Outcome::residual_before,
                    "(computed - measured) / uncertainty.")
      .def_readonly("residual_after", &Outcome::residual_after, "The same after.")
      .def_readonly("residual_left_out", &Outcome::residual_left_out,
                    "By a fit without this steel.")
      .def_readonly("weight", &Outcome::weight, "Of the last round; 0: not fitted to.")
      .def_readonly("left_out", &Outcome::left_out,
                    "Evaluations of the fit in which it was left out.")
      .def_readonly("reason", &Outcome::reason, "Of the last of them.")
      .def("__repr__", &text_of)
      .def(
          "__eq__", [](const Outcome& a, const Outcome& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(&get_state, &set_state));
}

}  // namespace gibbsteel::python

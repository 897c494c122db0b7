/// Quantity: a number that every usable state has.

#include "common.hpp"
#include "gibbsteel/quantity.hpp"
#include "pickling.hpp"
#include "shared_object.hpp"

namespace gibbsteel::python {
namespace {

/// A Python callable as the function of a quantity.
struct PythonFunction {
  SharedObject callable;

  double operator()(const State& state) const {
    const py::gil_scoped_acquire hold;
    const py::float_ number((*callable)(state));
    return number.cast<double>();
  }
};

Quantity from_python(std::string name, std::string unit, py::function function) {
  return {std::move(name), std::move(unit),
          PythonFunction{SharedObject(std::move(function))}};
}

/// What pickle needs to make it again: quantities.restore() and its arguments.
py::tuple reduced(const Quantity& q) {
  const auto restore = py::module_::import("gibbsteel.quantities").attr("restore");
  const py::str mark = pickle_mark("Quantity", 1);
  if (const auto* own = q.function().target<PythonFunction>())
    return py::make_tuple(restore,
                          py::make_tuple(mark, "", q.name(), q.unit(), *own->callable));
  if (q.origin().function.empty())
    throw py::type_error(
        "a quantity of one's own function after minutes cannot be pickled");
  const py::tuple arguments(py::cast(q.origin().arguments));
  return py::make_tuple(restore, py::make_tuple(mark, q.origin().function) + arguments);
}

std::pair<double, double> band(const Quantity& quantity, const State& state) {
  const Quantity::Ends ends = quantity.band(state);
  return {ends.low, ends.high};
}

void bind_functions(py::module_& m) {
  m.def("quantity_matrix", &quantities::matrix, py::arg("element"));
  m.def("quantity_in_phase", &quantities::in_phase, py::arg("kind"),
        py::arg("element"));
  m.def("quantity_driving_force", &quantities::driving_force, py::arg("kind"));
  m.def("quantity_in_carbides", &quantities::in_carbides, py::arg("element"));
  m.def("quantity_volume_percent", &quantities::volume_percent, py::arg("kind"));
  m.def("quantity_mass_percent", &quantities::mass_percent, py::arg("kind"));
  m.def("quantity_carbide_volume_percent", &quantities::carbide_volume_percent);
  m.def("quantity_carbide_mass_percent", &quantities::carbide_mass_percent);
  m.def("quantity_carbon_activity", &quantities::carbon_activity);
}

}  // namespace

void bind_quantity(py::module_& m) {
  py::class_<Quantity>(m, "Quantity",
                       "A number that every usable state has: what targets, "
                       "comparisons, tolerance bands and designs are about.\n\n"
                       "`function` gets a usable State and returns a float, NaN where "
                       "it does not exist.")
      .def(py::init(&from_python), py::arg("name"), py::arg("unit"),
           py::arg("function"))
      .def_property_readonly("name", &Quantity::name, "For tables.")
      .def_property_readonly("unit", &Quantity::unit,
                             "Such as vol%; empty for a pure number.")
      .def_property_readonly("label", &Quantity::label, "Name with the unit.")
      .def_property_readonly("by_family", &Quantity::by_family,
                             "True: it rests on the hardening family of the steel.")
      .def_property_readonly("has_band", &Quantity::has_band,
                             "True: its values come with a band, as hardening "
                             "estimates do.")
      .def(
          "band", &band, py::arg("state"),
          "Low and high end of the band of its value: a pair, NaN where there is none.")
      .def("value", &Quantity::value, py::arg("state"), "NaN when it is not usable.")
      .def(
          "problems",
          [](const Quantity& q, const SharedParameters& set) {
            return q.problems(*set);
          },
          py::arg("parameters"),
          "Elements and kinds of phase that it names and the parameter set lacks: list "
          "of Problem.")
      .def("slope", &Quantity::slope, py::arg("state"), py::arg("slope"),
           "Derivative, given that of the state.")
      .def("__repr__", [](const Quantity& q) { return "<Quantity " + q.label() + ">"; })
      .def("__reduce__", &reduced);
  bind_functions(m);
}

}  // namespace gibbsteel::python

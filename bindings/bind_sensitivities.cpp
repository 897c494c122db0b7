/// Sensitivities: a state and its slopes.

#include "common.hpp"
#include "gibbsteel/sensitivities.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

using Names = std::vector<std::string>;

Sensitivities run(const Steel& steel, double kelvin, const SoakOptions& options,
                  std::optional<Names> elements, Names parameters,
                  bool all_parameters) {
  return sensitivities(steel, Temperature::kelvin(kelvin), options,
                       {std::move(elements), std::move(parameters), all_parameters});
}

Names names_of(const Sensitivities& s) {
  Names names;
  for (const StateSlope& slope : s.slopes) names.push_back(slope.input.name);
  return names;
}

bool contains(const Sensitivities& s, const py::object& object) {
  if (!py::isinstance<py::str>(object)) return false;
  const auto name = object.cast<std::string>();
  for (const StateSlope& slope : s.slopes)
    if (slope.input.name == name) return true;
  return false;
}

}  // namespace

void bind_sensitivities(py::module_& m) {
  py::class_<Sensitivities>(m, "Sensitivities",
                            "A state, and the exact derivatives of every number in it.")
      .def_readonly("state", &Sensitivities::state, "The soak.")
      .def_readonly("slopes", &Sensitivities::slopes,
                    "list of StateSlope: temperature, elements, parameters.")
      .def_property_readonly("inputs", &names_of, "Names of all inputs.")
      .def("__getitem__",
           [](const Sensitivities& s, const std::string& name) { return s.at(name); })
      .def("__contains__", &contains)
      .def("__len__", [](const Sensitivities& s) { return s.slopes.size(); })
      .def(
          "to_frame",
          [](const py::object& self) {
            return py::module_::import("gibbsteel.slope_frames")
                .attr("sensitivities_to_frame")(self);
          },
          "Table (pandas): one row per quantity, one column per input; see "
          "gibbsteel.slope_frames.sensitivities_to_frame.")
      .def("__repr__", [](const Sensitivities& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &Sensitivities::full)
      .def(tagged_pickle(
          [](const Sensitivities& s) { return py::make_tuple(s.state, s.slopes); },
          [](const py::tuple& t) {
            return Sensitivities{t[0].cast<State>(),
                                 t[1].cast<std::vector<StateSlope>>()};
          }));

  m.def("sensitivities", &run, py::arg("steel"), py::arg("kelvin"), py::arg("options"),
        py::arg("elements"), py::arg("parameters"), py::arg("all_parameters"),
        py::call_guard<py::gil_scoped_release>(),
        "Soaks and differentiates, Eq. (S1) to (S5).");
}

}  // namespace gibbsteel::python

/// Input and StateSlope: derivatives of a state with respect to one input.

#include "common.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/sensitivities.hpp"
#include "named.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

std::string kind_of(const Input& input) {
  switch (input.kind) {
    case Input::Kind::temperature:
      return "temperature";
    case Input::Kind::element:
      return "element";
    case Input::Kind::parameter:
      break;
  }
  return "parameter";
}

void bind_input(py::module_& m) {
  py::class_<Input>(m, "Input", "What a slope is taken with respect to.")
      .def_property_readonly("kind", &kind_of,
                             "'temperature', 'element' or 'parameter'.")
      .def_readonly("name", &Input::name,
                    "'temperature', an element, or the place in the parameter file.")
      .def_readonly("unit", &Input::unit, "Unit of the input.")
      .def("__repr__",
           [](const Input& i) {
             return "<Input " + i.name + (i.unit.empty() ? "" : " [" + i.unit + "]") +
                    ">";
           })
      .def(
          "__eq__", [](const Input& a, const Input& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Input& i) {
            return py::make_tuple(static_cast<int>(i.kind), i.name, i.unit);
          },
          [](const py::tuple& t) {
            return Input{enumerator(t[0], Input::Kind::parameter),
                         t[1].cast<std::string>(), t[2].cast<std::string>()};
          }));
}

py::tuple get_state(const StateSlope& s) {
  return py::make_tuple(s.input, s.occurrences, s.matrix, s.carbide_volume_percent,
                        s.carbide_mass_percent, s.carbon_activity, s.gibbs_energy,
                        s.density, s.chemical_potential, s.driving_force, s.one_sided,
                        s.remark);
}

StateSlope set_state(const py::tuple& t) {
  StateSlope s;
  s.input = t[0].cast<Input>();
  s.occurrences = t[1].cast<std::vector<Occurrence>>();
  s.matrix = t[2].cast<Matrix>();
  s.carbide_volume_percent = t[3].cast<double>();
  s.carbide_mass_percent = t[4].cast<double>();
  s.carbon_activity = t[5].cast<double>();
  s.gibbs_energy = t[6].cast<double>();
  s.density = t[7].cast<double>();
  s.chemical_potential = t[8].cast<NamedValues>();
  s.driving_force = t[9].cast<NamedValues>();
  s.one_sided = t[10].cast<bool>();
  s.remark = t[11].cast<std::string>();
  return s;
}

const Occurrence& item(const StateSlope& slope, const std::string& name) {
  for (const Occurrence& o : slope.occurrences)
    if (o.name == name) return o;
  std::string present;
  for (const Occurrence& o : slope.occurrences)
    present += (present.empty() ? "" : ", ") + o.name;
  throw InputError(
      {{"gibbsteel.input.209", "slopes", "'" + name + "' is absent",
        present.empty() ? "the slope holds no phase" : "present: " + present}});
}

}  // namespace

void bind_state_slope(py::module_& m) {
  bind_input(m);
  py::class_<StateSlope> slope(
      m, "StateSlope",
      "Derivatives of every number of a state with respect to one input, each in the "
      "place that the number has in the State.");
  def_by_element(slope, "chemical_potential", &StateSlope::chemical_potential,
                 "dict: element -> [J/mol per unit of the input]");
  slope
      .def_readonly("input", &StateSlope::input,
                    "What the slopes are taken with respect to.")
      .def_readonly("occurrences", &StateSlope::occurrences,
                    "In the order of the state's.")
      .def_readonly("matrix", &StateSlope::matrix, "All matrix phases together.")
      .def_readonly("carbide_volume_percent", &StateSlope::carbide_volume_percent,
                    "[vol% per unit of the input]")
      .def_readonly("carbide_mass_percent", &StateSlope::carbide_mass_percent,
                    "[mass% per unit of the input]")
      .def_readonly("carbon_activity", &StateSlope::carbon_activity,
                    "[1 per unit of the input]")
      .def_readonly("gibbs_energy", &StateSlope::gibbs_energy,
                    "[J/mol of atoms per unit of the input]")
      .def_readonly("density", &StateSlope::density, "[g/cm3 per unit of the input]")
      .def_readonly("driving_force", &StateSlope::driving_force,
                    "dict: kind -> [J/mol of atoms per unit of the input]")
      .def_readonly("one_sided", &StateSlope::one_sided,
                    "True close to a phase change: holds on the side of the phases "
                    "that the state has.")
      .def_readonly("remark", &StateSlope::remark,
                    "Why, when one-sided or not available; else empty.")
      .def("__getitem__", &item, "Slopes of an occurrence of the state, by its name.")
      .def("__repr__",
           [](const StateSlope& s) {
             return py::str("<StateSlope per {} of {}{}>")
                 .format(s.input.unit.empty() ? "unit" : s.input.unit, s.input.name,
                         s.remark.empty() ? "" : ": " + s.remark);
           })
      .def("__str__", &slope_text)
      .def(tagged_pickle(&get_state, &set_state));
}

}  // namespace gibbsteel::python

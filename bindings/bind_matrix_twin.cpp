/// MakeableSteps, matrix twins and TwinStudy.

#include "common.hpp"
#include "gibbsteel/matrix_twin.hpp"
#include "pickling.hpp"
#include "wrapped_steel.hpp"

namespace gibbsteel::python {
namespace {

MatrixTwinOptions options_of(const MakeableSteps& steps, bool keep_not_modelled,
                             TemperatureUnit unit = TemperatureUnit::celsius) {
  MatrixTwinOptions options;
  options.makeable = steps;
  options.keep_not_modelled = keep_not_modelled;
  options.soak.temperature_unit = unit;
  return options;
}

void bind_steps(py::module_& m) {
  const MakeableSteps usual;
  py::class_<MakeableSteps>(m, "MakeableSteps",
                            "Steps to which weight percents are rounded.")
      .def(py::init([](const NamedValues& steps, double others) {
             return MakeableSteps{steps, others};
           }),
           py::arg("steps") = usual.steps, py::arg("others") = usual.others)
      .def_static("none", &MakeableSteps::none, "Leaves every number as it is.")
      .def_readonly("steps", &MakeableSteps::steps, "dict: element -> step [wt%].")
      .def_readonly("others", &MakeableSteps::others, "Of elements not listed [wt%].")
      .def_readonly("round", &MakeableSteps::round, "False: nothing is rounded.")
      .def("__repr__",
           [](const MakeableSteps& s) -> py::str {
             if (!s.round) return "<MakeableSteps: none>";
             return py::str("<MakeableSteps {}, others {} wt%>")
                 .format(s.steps, s.others);
           })
      .def(
          "__eq__",
          [](const MakeableSteps& a, const MakeableSteps& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const MakeableSteps& s) {
            return py::make_tuple(s.steps, s.others, s.round);
          },
          [](const py::tuple& t) {
            return MakeableSteps{t[0].cast<NamedValues>(), t[1].cast<double>(),
                                 t[2].cast<bool>()};
          }));
}

py::tuple get_state(const TwinStudy& s) {
  return py::make_tuple(s.reference, s.exact, pickled(s.twin), s.same, s.others);
}

TwinStudy set_state(const py::tuple& t) {
  return {t[0].cast<State>(), t[1].cast<NamedValues>(), unpickled(t[2]),
          t[3].cast<State>(), t[4].cast<Sweep>()};
}

void bind_study(py::module_& m) {
  py::class_<TwinStudy>(m, "TwinStudy",
                        "A matrix twin and its residual carbide at the same and at "
                        "other temperatures.")
      .def_readonly("reference", &TwinStudy::reference,
                    "The full-carbide steel at the soak.")
      .def_readonly("exact", &TwinStudy::exact,
                    "Its matrix before rounding, dict of weight percents.")
      .def_property_readonly(
          "twin", [](const TwinStudy& s) { return wrapped(s.twin); },
          "The Steel made of the matrix.")
      .def_readonly("same", &TwinStudy::same, "The twin at the same soak.")
      .def_readonly("others", &TwinStudy::others, "The twin at the other temperatures.")
      .def_property_readonly("warnings", &TwinStudy::warnings,
                             "That the twin is of another hardening family.")
      .def("__repr__", [](const TwinStudy& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &TwinStudy::full)
      .def(tagged_pickle(&get_state, &set_state));
}

}  // namespace

void bind_matrix_twin(py::module_& m) {
  bind_steps(m);
  bind_study(m);
  m.def(
      "matrix_twin",
      [](const Steel& steel, const State& state, const MakeableSteps& steps,
         bool keep_not_modelled) {
        return matrix_twin(steel, state, options_of(steps, keep_not_modelled));
      },
      py::arg("steel"), py::arg("state"), py::arg("steps"),
      py::arg("keep_not_modelled"));
  m.def(
      "matrix_twin_at",
      [](const Steel& steel, double kelvin, const MakeableSteps& steps,
         bool keep_not_modelled) {
        return matrix_twin(steel, Temperature::kelvin(kelvin),
                           options_of(steps, keep_not_modelled));
      },
      py::arg("steel"), py::arg("kelvin"), py::arg("steps"),
      py::arg("keep_not_modelled"), py::call_guard<py::gil_scoped_release>());
  m.def(
      "twin_study",
      [](const Steel& steel, double kelvin, const std::vector<double>& others,
         const MakeableSteps& steps, bool keep_not_modelled, const std::string& unit) {
        std::vector<Temperature> at;
        for (const double value : others) at.push_back(Temperature::kelvin(value));
        return twin_study(steel, Temperature::kelvin(kelvin), at,
                          options_of(steps, keep_not_modelled, temperature_unit(unit)));
      },
      py::arg("steel"), py::arg("kelvin"), py::arg("others"), py::arg("steps"),
      py::arg("keep_not_modelled"), py::arg("unit"),
      py::call_guard<py::gil_scoped_release>());
}

}  // namespace gibbsteel::python

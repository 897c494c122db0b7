/// Equilibrium, PhasePoint and minimize(): the minimizer without the facade.

#include "arrays.hpp"
#include "common.hpp"
#include "gibbsteel/minimizer.hpp"

namespace gibbsteel::python {
namespace {

/// An equilibrium with the names of its phases and elements.
struct NamedEquilibrium {
  Equilibrium result;
  std::vector<std::string> elements, phases;
};

py::list points(const NamedEquilibrium& e, const std::vector<PhasePoint>& all) {
  py::list list;
  for (const auto& point : all) {
    py::dict d;
    d["phase"] = e.phases[point.phase];
    d["amount"] = point.amount;
    d["site_fractions"] = read_only(point.y);
    d["driving_force"] = point.driving_force;
    list.append(d);
  }
  return list;
}

NamedEquilibrium run(const std::shared_ptr<ParameterSet>& set,
                     const std::vector<std::string>& elements,
                     const std::vector<double>& mole_fractions, double kelvin,
                     const std::vector<std::string>& phases,
                     const SolveOptions& options) {
  const PhaseSystem system(set, elements, phases);
  NamedEquilibrium named;
  named.result =
      minimize(system, Temperature::kelvin(kelvin), mole_fractions, options);
  named.elements = elements;
  for (const auto& phase : system.phases()) named.phases.push_back(phase.name());
  return named;
}

}  // namespace

void bind_equilibrium(py::module_& m) {
  py::class_<NamedEquilibrium>(m, "Equilibrium", "What the minimizer found.")
      .def_property_readonly(
          "report", [](const NamedEquilibrium& e) { return e.result.report; })
      .def_property_readonly(
          "kelvin",
          [](const NamedEquilibrium& e) { return e.result.temperature.in_kelvin(); })
      .def_property_readonly(
          "gibbs_energy",
          [](const NamedEquilibrium& e) { return e.result.gibbs_energy; },
          "[J/mol of atoms]; NaN when not usable.")
      .def_property_readonly(
          "chemical_potential",
          [](const NamedEquilibrium& e) {
            NamedValues values;
            for (std::size_t i = 0; i < e.result.chemical_potential.size(); ++i)
              values.set(e.elements[i], e.result.chemical_potential[i]);
            return values;
          },
          "dict: element -> [J/mol].")
      .def_property_readonly(
          "present",
          [](const NamedEquilibrium& e) { return points(e, e.result.present); },
          "list of dicts: phase, amount [mol of formula units per mol of atoms], "
          "site_fractions, driving_force.")
      .def_property_readonly(
          "absent", [](const NamedEquilibrium& e) { return points(e, e.result.absent); },
          "Distinct local minima that are not present, the nearest first.")
      .def("__repr__", [](const NamedEquilibrium& e) {
        return "<Equilibrium: " + e.result.report.brief() + ">";
      });

  m.def("minimize", &run, py::arg("parameters"), py::arg("elements"),
        py::arg("mole_fractions"), py::arg("kelvin"), py::arg("phases"),
        py::arg("options"), py::call_guard<py::gil_scoped_release>());
}

}  // namespace gibbsteel::python

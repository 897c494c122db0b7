/// Equilibrium, PhasePoint and minimize(): the minimizer without the facade.

#include "arrays.hpp"
#include "common.hpp"
#include "gibbsteel/minimizer.hpp"
#include "pickling.hpp"

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

py::list points_state(const std::vector<PhasePoint>& all) {
  py::list list;
  for (const auto& p : all)
    list.append(py::make_tuple(p.phase, p.amount, p.y, p.driving_force));
  return list;
}

std::vector<PhasePoint> points_from(const py::list& list) {
  std::vector<PhasePoint> all;
  for (const auto& item : list) {
    const auto t = item.cast<py::tuple>();
    all.push_back({t[0].cast<std::size_t>(), t[1].cast<double>(),
                   t[2].cast<std::vector<double>>(), t[3].cast<double>()});
  }
  return all;
}

py::tuple get_state(const NamedEquilibrium& e) {
  const Equilibrium& r = e.result;
  return py::make_tuple(r.report, r.temperature.in_kelvin(), r.gibbs_energy,
                        r.chemical_potential, points_state(r.present),
                        points_state(r.absent), e.elements, e.phases);
}

NamedEquilibrium set_state(const py::tuple& t) {
  NamedEquilibrium e;
  e.result.report = t[0].cast<SolveReport>();
  e.result.temperature = Temperature::kelvin(t[1].cast<double>());
  e.result.gibbs_energy = t[2].cast<double>();
  e.result.chemical_potential = t[3].cast<std::vector<double>>();
  e.result.present = points_from(t[4].cast<py::list>());
  e.result.absent = points_from(t[5].cast<py::list>());
  e.elements = t[6].cast<std::vector<std::string>>();
  e.phases = t[7].cast<std::vector<std::string>>();
  return e;
}

NamedEquilibrium run(const std::shared_ptr<ParameterSet>& set,
                     const std::vector<std::string>& elements,
                     const std::vector<double>& mole_fractions, double kelvin,
                     const std::vector<std::string>& phases,
                     const SolveOptions& options) {
  const PhaseSystem system(set, elements, phases);
  NamedEquilibrium named;
  named.result = minimize(system, Temperature::kelvin(kelvin), mole_fractions, options);
  named.elements = elements;
  for (const auto& phase : system.phases()) named.phases.push_back(phase.name());
  return named;
}

NamedValues potentials(const NamedEquilibrium& e) {
  NamedValues values;
  for (std::size_t i = 0; i < e.result.chemical_potential.size(); ++i)
    values.set(e.elements[i], e.result.chemical_potential[i]);
  return values;
}

}  // namespace

void bind_equilibrium(py::module_& m) {
  py::class_<NamedEquilibrium>(m, "Equilibrium", "What the minimizer found.")
      .def_property_readonly(
          "report", [](const NamedEquilibrium& e) { return e.result.report; },
          "How it went.")
      .def_property_readonly(
          "kelvin",
          [](const NamedEquilibrium& e) { return e.result.temperature.in_kelvin(); },
          "Temperature [K].")
      .def_property_readonly(
          "gibbs_energy",
          [](const NamedEquilibrium& e) { return e.result.gibbs_energy; },
          "[J/mol of atoms]; NaN when not usable.")
      .def_property_readonly("chemical_potential", &potentials,
                             "dict: element -> [J/mol].")
      .def_property_readonly(
          "present",
          [](const NamedEquilibrium& e) { return points(e, e.result.present); },
          "list of dicts: phase, amount [mol of formula units per mol of atoms], "
          "site_fractions, driving_force.")
      .def_property_readonly(
          "absent",
          [](const NamedEquilibrium& e) { return points(e, e.result.absent); },
          "Distinct local minima that are not present, the nearest first.")
      .def("__repr__",
           [](const NamedEquilibrium& e) {
             return "<Equilibrium: " + e.result.report.brief() + ">";
           })
      .def(tagged_pickle(&get_state, &set_state));

  m.def("minimize", &run, py::arg("parameters"), py::arg("elements"),
        py::arg("mole_fractions"), py::arg("kelvin"), py::arg("phases"),
        py::arg("options"), py::call_guard<py::gil_scoped_release>());
}

}  // namespace gibbsteel::python

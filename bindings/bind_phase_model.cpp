/// PhaseModel: energies and derivatives of one phase.

#include "arrays.hpp"
#include "common.hpp"
#include "gibbsteel/phase_model.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

void bind_constituent(py::module_& m) {
  py::class_<Constituent>(m, "Constituent", "A constituent of a phase model.")
      .def_readonly("name", &Constituent::name, "Element symbol or 'vacancy'.")
      .def_readonly("sublattice", &Constituent::sublattice, "Index from 0.")
      .def("__repr__",
           [](const Constituent& c) {
             return "<Constituent " + c.name + " on sublattice " +
                    std::to_string(c.sublattice + 1) + ">";
           })
      .def(tagged_pickle(
          [](const Constituent& c) {
            return py::make_tuple(c.name, c.sublattice, c.element);
          },
          [](const py::tuple& t) {
            return Constituent{t[0].cast<std::string>(), t[1].cast<std::size_t>(),
                               t[2].cast<int>()};
          }));
}

void bind_derivatives(py::module_& m) {
  py::class_<PhaseDerivatives>(m, "PhaseDerivatives",
                               "Energy and derivatives per mole of formula units, as "
                               "if every site fraction were independent. Eq. (G1)")
      .def_readonly("value", &PhaseDerivatives::value, "G [J/mol]")
      .def_readonly("dt", &PhaseDerivatives::dt, "dG/dT = -S [J/(mol K)]")
      .def_readonly("dt2", &PhaseDerivatives::dt2, "d2G/dT2 [J/(mol K^2)]")
      .def_property_readonly(
          "dy", [](const PhaseDerivatives& d) { return read_only(d.dy); },
          "dG/dy [J/mol], shape (n,)")
      .def_property_readonly(
          "dydt", [](const PhaseDerivatives& d) { return read_only(d.dydt); },
          "d2G/dydT [J/(mol K)], shape (n,)")
      .def_property_readonly(
          "dy2",
          [](const PhaseDerivatives& d) {
            const auto n = static_cast<py::ssize_t>(d.dy.size());
            return read_only(d.dy2, {n, n});
          },
          "d2G/dy2 [J/mol], shape (n, n)")
      .def(tagged_pickle(
          [](const PhaseDerivatives& d) {
            return py::make_tuple(d.value, d.dt, d.dt2, d.dy, d.dydt, d.dy2);
          },
          [](const py::tuple& t) {
            using List = std::vector<double>;
            return PhaseDerivatives{t[0].cast<double>(), t[1].cast<double>(),
                                    t[2].cast<double>(), t[3].cast<List>(),
                                    t[4].cast<List>(),   t[5].cast<List>()};
          }));
}

py::array_t<double> sites_of(const PhaseModel& model) {
  std::vector<double> sites;
  for (std::size_t i = 0; i < model.constituents().size(); ++i)
    sites.push_back(model.sites(i));
  return read_only(sites);
}

}  // namespace

void bind_phase_model(py::module_& m) {
  bind_constituent(m);
  bind_derivatives(m);
  py::class_<PhaseModel>(m, "PhaseModel", "One phase compiled for a list of elements.")
      .def_property_readonly("name", &PhaseModel::name,
                             "Name of the phase in the file.")
      .def_property_readonly("reachable", &PhaseModel::reachable,
                             "False when a sublattice has no constituent left.")
      .def_property_readonly("constituents", &PhaseModel::constituents,
                             "All constituents, in the order of site fractions.")
      .def_property_readonly("sites", &sites_of,
                             "Sites of the sublattice of each constituent, shape (n,).")
      .def(
          "_evaluate",
          [](const PhaseModel& p, double kelvin, const std::vector<double>& y) {
            return p.evaluate(Temperature::kelvin(kelvin), y);
          },
          py::arg("kelvin"), py::arg("site_fractions"))
      .def(
          "curie_temperature",
          [](const PhaseModel& p, const std::vector<double>& y) {
            return p.curie_temperature(y);
          },
          py::arg("site_fractions"), "Effective Curie temperature [K]. Eq. (G5)")
      .def(
          "magnetic_moment",
          [](const PhaseModel& p, const std::vector<double>& y) {
            return p.magnetic_moment(y);
          },
          py::arg("site_fractions"), "Effective moment [Bohr magnetons]. Eq. (G5)")
      .def("__repr__", [](const PhaseModel& p) {
        return "<PhaseModel " + p.name() + ": " +
               std::to_string(p.constituents().size()) + " constituents>";
      });
}

}  // namespace gibbsteel::python

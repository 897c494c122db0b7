/// Occurrence: one phase region of a state.

#include "common.hpp"
#include "gibbsteel/assemblage.hpp"
#include "named.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

py::list fractions_by_sublattice(const Occurrence& occurrence) {
  py::list result;
  for (const auto& sublattice : occurrence.site_fractions)
    result.append(py::cast(sublattice.fractions));
  return result;
}

py::tuple get_state(const Occurrence& o) {
  py::list sites;
  for (const auto& s : o.site_fractions)
    sites.append(py::make_tuple(s.sites, s.fractions));
  return py::make_tuple(o.name, o.kind, o.phase, static_cast<int>(o.role),
                        o.mole_percent, o.mass_percent, o.volume_percent, o.molar_mass,
                        o.molar_volume, o.density, o.weight_percent, o.atom_fraction,
                        sites);
}

Occurrence set_state(const py::tuple& t) {
  Occurrence o;
  o.name = t[0].cast<std::string>();
  o.kind = t[1].cast<std::string>();
  o.phase = t[2].cast<std::string>();
  o.role = enumerator(t[3], Role::other);
  o.mole_percent = t[4].cast<double>();
  o.mass_percent = t[5].cast<double>();
  o.volume_percent = t[6].cast<double>();
  o.molar_mass = t[7].cast<double>();
  o.molar_volume = t[8].cast<double>();
  o.density = t[9].cast<double>();
  o.weight_percent = t[10].cast<NamedValues>();
  o.atom_fraction = t[11].cast<NamedValues>();
  for (const auto& item : t[12].cast<py::list>()) {
    const auto pair = item.cast<py::tuple>();
    o.site_fractions.push_back({pair[0].cast<double>(), pair[1].cast<NamedValues>()});
  }
  return o;
}

}  // namespace

void bind_occurrence(py::module_& m) {
  py::class_<Occurrence> occurrence(
      m, "Occurrence", "One phase region of a state: all its particles together.");
  def_by_element(occurrence, "weight_percent", &Occurrence::weight_percent,
                 "Composition of this occurrence: dict of weight percents.");
  def_by_element(occurrence, "atom_fraction", &Occurrence::atom_fraction,
                 "Composition of this occurrence: dict of atom fractions, sum 1.");
  occurrence.def_readonly("name", &Occurrence::name, "Unique in its state.")
      .def_readonly("kind", &Occurrence::kind,
                    "Name without the words that tell two of a kind apart.")
      .def_readonly("phase", &Occurrence::phase, "Phase model in the parameter file.")
      .def_property_readonly(
          "role", [](const Occurrence& o) { return std::string(to_string(o.role)); },
          "'matrix', 'carbide' or 'other'.")
      .def_readonly("mole_percent", &Occurrence::mole_percent, "Percent of the atoms.")
      .def_readonly("mass_percent", &Occurrence::mass_percent, "Percent of the mass.")
      .def_readonly("volume_percent", &Occurrence::volume_percent,
                    "Percent of the volume; NaN without volume data.")
      .def_readonly("molar_mass", &Occurrence::molar_mass, "[g per mol of atoms]")
      .def_readonly("molar_volume", &Occurrence::molar_volume,
                    "[cm3 per mol of atoms]; NaN without volume data.")
      .def_readonly("density", &Occurrence::density,
                    "[g/cm3]; NaN without volume data.")
      .def_property_readonly("site_fractions", &fractions_by_sublattice,
                             "One dict per sublattice, 'vacancy' included.")
      .def_property_readonly(
          "sites",
          [](const Occurrence& o) {
            py::list sites;
            for (const auto& s : o.site_fractions) sites.append(s.sites);
            return sites;
          },
          "Sites of each sublattice per formula unit.")
      .def("__repr__", [](const Occurrence& o) { return "<" + o.brief() + ">"; })
      .def("__str__", &Occurrence::brief)
      .def(
          "__eq__", [](const Occurrence& a, const Occurrence& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(&get_state, &set_state));
}

}  // namespace gibbsteel::python

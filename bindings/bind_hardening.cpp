/// HardeningOptions and HardeningEstimates.

#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/hardening_quantities.hpp"
#include "named.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

using Key = std::optional<std::string>;

HardeningOptions hardening_options(std::optional<double> coldest_kelvin, Key family,
                                   Key martensite_start, Key retained_austenite,
                                   Key martensite_hardness, Key grain_pinning,
                                   std::optional<double> particle_diameter,
                                   std::optional<double> cooling_rate,
                                   const std::optional<PropertyEquations>& equations) {
  HardeningOptions options;
  if (coldest_kelvin) options.coldest = Temperature::kelvin(*coldest_kelvin);
  options.family = std::move(family);
  options.martensite_start = std::move(martensite_start);
  options.retained_austenite = std::move(retained_austenite);
  options.martensite_hardness = std::move(martensite_hardness);
  options.grain_pinning = std::move(grain_pinning);
  options.particle_diameter = particle_diameter;
  if (cooling_rate) options.cooling_rate = *cooling_rate;
  if (equations) options.equations = *equations;
  return options;
}

py::tuple get_state(const HardeningEstimates& e) {
  return py::make_tuple(
      e.steel, e.soak.in_kelvin(), e.coldest.in_kelvin(), e.family, e.family_chosen,
      e.austenite, e.austenite_percent, e.martensite_start, e.retained_austenite,
      e.retained_austenite_of_matrix, e.hardness_hv, e.hardness_hrc, e.grain_diameter,
      e.matrix_indices, e.steel_indices, e.warnings, e.family_shares, e.analysis,
      e.parameters, e.parameters_hash, e.condition);
}

HardeningEstimates set_state(const py::tuple& t, int format) {
  const std::size_t fields = format > 2 ? 21 : (format > 1 ? 17 : 16);
  if (t.size() != fields) throw py::value_error("number of fields");
  HardeningEstimates e;
  e.steel = t[0].cast<std::string>();
  e.soak = Temperature::kelvin(t[1].cast<double>());
  e.coldest = Temperature::kelvin(t[2].cast<double>());
  e.family = t[3].cast<HardeningFamily>();
  e.family_chosen = t[4].cast<bool>();
  e.austenite = t[5].cast<NamedValues>();
  e.austenite_percent = t[6].cast<double>();
  e.martensite_start = t[7].cast<Estimate>();
  e.retained_austenite = t[8].cast<Estimate>();
  e.retained_austenite_of_matrix = t[9].cast<Estimate>();
  e.hardness_hv = t[10].cast<Estimate>();
  e.hardness_hrc = t[11].cast<Estimate>();
  e.grain_diameter = t[12].cast<Estimate>();
  e.matrix_indices = t[13].cast<TradeIndices>();
  e.steel_indices = t[14].cast<TradeIndices>();
  e.warnings = t[15].cast<std::vector<Warning>>();
  if (format > 1)
    e.family_shares = t[16].cast<NamedValues>();
  else  // before there were shares
    e.family_shares.set(e.family.key, 1.0);
  if (format < 3) return e;
  e.analysis = t[17].cast<MillAnalysis>();
  e.parameters = t[18].cast<std::string>();
  e.parameters_hash = t[19].cast<std::string>();
  e.condition = t[20].cast<std::string>();
  return e;
}

using EstimatesClass = py::class_<HardeningEstimates>;

void bind_conditions(EstimatesClass& estimates) {
  using E = HardeningEstimates;
  estimates.def_readonly("steel", &E::steel, "Name of the steel; may be empty.")
      .def_readonly("analysis", &E::analysis, "MillAnalysis of the steel.")
      .def_readonly("parameters", &E::parameters, "Title and edition of the set.")
      .def_readonly("parameters_hash", &E::parameters_hash, "Of its content.")
      .def_readonly("condition", &E::condition,
                    "How it was soaked: ``\"long-hold limit\"``, ``\"timed soak of 30 "
                    "min\"``.")
      .def_property_readonly(
          "soak_kelvin", [](const E& e) { return e.soak.in_kelvin(); },
          "Temperature of the soak [K].")
      .def_property_readonly(
          "soak_celsius", [](const E& e) { return celsius_of(e.soak); },
          "Temperature of the soak [C].")
      .def_property_readonly(
          "coldest_kelvin", [](const E& e) { return e.coldest.in_kelvin(); },
          "Coldest temperature of the quench [K].")
      .def_property_readonly(
          "coldest_celsius", [](const E& e) { return celsius_of(e.coldest); },
          "Coldest temperature of the quench [C].")
      .def_readonly("family", &E::family, "HardeningFamily in use.")
      .def_readonly("family_chosen", &E::family_chosen, "True: named in the options.")
      .def_readonly("family_shares", &E::family_shares,
                    "dict of the share of each family, 0 to 1: more than one near a "
                    "border.")
      .def_readonly("austenite_percent", &E::austenite_percent,
                    "Of the matrix, before the quench.");
  def_by_element(estimates, "austenite", &E::austenite,
                 "dict: weight percent that the equations got.");
}

}  // namespace

void bind_hardening(py::module_& m) {
  using E = HardeningEstimates;
  py::class_<HardeningOptions>(m, "HardeningOptions")
      .def(py::init(&hardening_options), py::kw_only(), py::arg("coldest_kelvin"),
           py::arg("family"), py::arg("martensite_start"),
           py::arg("retained_austenite"), py::arg("martensite_hardness"),
           py::arg("grain_pinning"), py::arg("particle_diameter"),
           py::arg("cooling_rate"), py::arg("equations"));

  EstimatesClass estimates(m, "HardeningEstimates",
                           "What quenching makes of a soaked steel.");
  bind_conditions(estimates);
  estimates.def_readonly("martensite_start", &E::martensite_start, "[C]")
      .def_readonly("retained_austenite", &E::retained_austenite, "[vol% of the steel]")
      .def_readonly("retained_austenite_of_matrix", &E::retained_austenite_of_matrix,
                    "[vol% of the matrix]")
      .def_readonly("hardness_hv", &E::hardness_hv, "As quenched [HV].")
      .def_readonly("hardness_hrc", &E::hardness_hrc, "As quenched [HRC].")
      .def_readonly("grain_diameter", &E::grain_diameter, "Austenite grain limit [um].")
      .def_readonly("matrix_indices", &E::matrix_indices,
                    "Of all matrix phases together.")
      .def_readonly("steel_indices", &E::steel_indices, "Of the whole certificate.")
      .def_readonly("warnings", &E::warnings, "What to know about these estimates.")
      .def("__repr__", [](const E& e) { return "<" + e.brief() + ">"; })
      .def("__str__", &E::full)
      .def(
          "__eq__", [](const E& a, const E& b) { return a == b; }, py::is_operator())
      .def(tagged_pickle(&get_state, &set_state, 3));
  m.def("quantity_martensite_start", &quantities::martensite_start, py::arg("options"));
  m.def("quantity_retained_austenite", &quantities::retained_austenite,
        py::arg("options"));
  m.def("quantity_retained_austenite_of_matrix",
        &quantities::retained_austenite_of_matrix, py::arg("options"));
  m.def("quantity_hardness_hv", &quantities::hardness_hv, py::arg("options"));
  m.def("quantity_hardness_hrc", &quantities::hardness_hrc, py::arg("options"));
  m.def("quantity_grain_limit", &quantities::grain_limit, py::arg("options"));
  m.def("_hardening", &hardening, py::arg("state"), py::arg("options"));
}

}  // namespace gibbsteel::python

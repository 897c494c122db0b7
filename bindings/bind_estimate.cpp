/// Estimate, TradeIndices and HardeningFamily, and the hardness of mixtures.

#include "common.hpp"
#include "gibbsteel/estimate.hpp"
#include "gibbsteel/hardening_family.hpp"
#include "gibbsteel/hardness_scale.hpp"
#include "gibbsteel/trade_indices.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

void bind_indices(py::module_& m) {
  py::class_<TradeIndices>(m, "TradeIndices", "The trade's rules of thumb.")
      .def_readonly("molybdenum_equivalent", &TradeIndices::molybdenum_equivalent,
                    "Mo + W/2.")
      .def_readonly("carbon_balance", &TradeIndices::carbon_balance,
                    "C - 0.033W - 0.063Mo - 0.06Cr - 0.2V.")
      .def_readonly("pitting_index", &TradeIndices::pitting_index,
                    "Cr + 3.3(Mo + W/2) + 16N.")
      .def("__repr__",
           [](const TradeIndices& x) {
             return py::str(
                        "<TradeIndices: Mo + W/2 {:.2f}, carbon balance {:.3f}, "
                        "pitting index {:.1f}>")
                 .format(x.molybdenum_equivalent, x.carbon_balance, x.pitting_index);
           })
      .def(
          "__eq__", [](const TradeIndices& a, const TradeIndices& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const TradeIndices& x) {
            return py::make_tuple(x.molybdenum_equivalent, x.carbon_balance,
                                  x.pitting_index);
          },
          [](const py::tuple& t) {
            return TradeIndices{t[0].cast<double>(), t[1].cast<double>(),
                                t[2].cast<double>()};
          }));
  m.def("trade_indices", &trade_indices, py::arg("weight_percent"),
        "TradeIndices of a composition in weight percent.");
}

void bind_family(py::module_& m) {
  using Family = HardeningFamily;
  py::class_<Family>(m, "HardeningFamily", "What one family of steels needs.")
      .def_readonly("key", &Family::key, "By which it is chosen: ``\"high-speed\"``.")
      .def_readonly("name", &Family::name, "In words.")
      .def_readonly("rule", &Family::rule,
                    "Composition by which it is chosen [wt% of the steel].")
      .def_readonly("start_offset", &Family::start_offset, "[C]")
      .def_readonly("start_error", &Family::start_error, "[C]")
      .def_readonly("start_scatter", &Family::start_scatter, "[C]")
      .def_readonly("start_records", &Family::start_records,
                    "Number of records behind the offset.")
      .def_readonly("transformation_rate", &Family::transformation_rate, "[1/C]")
      .def_readonly("retained_error", &Family::retained_error,
                    "Standard deviation of the fraction of retained austenite.")
      .def_readonly("retained_records", &Family::retained_records,
                    "Number of records behind the rate; 0: the published rate.")
      .def_readonly("hardness_offset", &Family::hardness_offset, "[HV]")
      .def_readonly("hardness_error", &Family::hardness_error, "[HV]")
      .def_readonly("hardness_records", &Family::hardness_records,
                    "Number of records behind the offset.")
      .def_readonly("hardness_steels", &Family::hardness_steels,
                    "Number of steels that the records are of.")
      .def_readonly("hardness_soaked", &Family::hardness_soaked,
                    "Of the records: austenite computed with the shipped file, so the "
                    "offset takes up what that file has wrong in it.")
      .def_readonly("fitted", &Family::fitted, "Which records.")
      .def("__repr__",
           [](const Family& f) { return "<HardeningFamily " + f.key + ">"; })
      .def(
          "__eq__", [](const Family& a, const Family& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle([](const Family& f) { return py::make_tuple(f.key); },
                         [](const py::tuple& t) {
                           return hardening_family(t[0].cast<std::string>());
                         }));
  m.def("hardening_families", &hardening_families);
}

void bind_hardness(py::module_& m) {
  m.def("hrc_from_hv", &hrc_from_hv, py::arg("hv"));
  m.def("hv_from_hrc", &hv_from_hrc, py::arg("hrc"));
  m.def("carbide_hardness", &carbide_hardness, py::arg("kind"));
  m.def("mixture_hardness", &mixture_hardness, py::kw_only(), py::arg("martensite"),
        py::arg("austenite"), py::arg("carbide"), py::arg("carbide_hv"));
  m.def("quenched_hardness", &quenched_hardness, py::kw_only(), py::arg("martensite"),
        py::arg("austenite"), py::arg("carbide"), py::arg("carbide_hv"));
}

py::tuple estimate_state(const Estimate& e) {
  return py::make_tuple(e.name, e.value, e.low, e.high, e.unit, e.equation, e.source,
                        e.in_range, e.remarks);
}

}  // namespace

void bind_estimate(py::module_& m) {
  py::class_<Estimate>(m, "Estimate", "A number with its band and where it comes from.")
      .def_readonly("name", &Estimate::name, "For instance ``\"martensite start\"``.")
      .def_readonly("value", &Estimate::value, "NaN when there is none.")
      .def_readonly(
          "low", &Estimate::low,
          "About two in three measurements lie in the band, of hardness more.")
      .def_readonly("high", &Estimate::high, "Upper end of the band.")
      .def_readonly("unit", &Estimate::unit,
                    "``\"C\"``, ``\"vol%\"``, ``\"HV\"``, ``\"HRC\"``, ``\"um\"``.")
      .def_readonly("equation", &Estimate::equation,
                    "Key of the equation, and what was added to it.")
      .def_readonly("source", &Estimate::source, "Citation of the equation.")
      .def_readonly("in_range", &Estimate::in_range,
                    "False: an input lies outside the stated range of the equation.")
      .def_readonly("remarks", &Estimate::remarks, "What to know about it.")
      .def_property_readonly("known", &Estimate::known, "False when there is no value.")
      .def("__repr__", [](const Estimate& e) { return "<" + e.brief() + ">"; })
      .def("__float__", [](const Estimate& e) { return e.value; })
      .def(
          "__eq__", [](const Estimate& a, const Estimate& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(&estimate_state, [](const py::tuple& t) {
        return Estimate{t[0].cast<std::string>(),
                        t[1].cast<double>(),
                        t[2].cast<double>(),
                        t[3].cast<double>(),
                        t[4].cast<std::string>(),
                        t[5].cast<std::string>(),
                        t[6].cast<std::string>(),
                        t[7].cast<bool>(),
                        t[8].cast<std::vector<std::string>>()};
      }));
  bind_hardness(m);
  bind_indices(m);
  bind_family(m);
}

}  // namespace gibbsteel::python

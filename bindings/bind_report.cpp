/// Report: one page of a state or a sweep.

#include "common.hpp"
#include "gibbsteel/report.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

py::dict as_dict(const std::vector<std::pair<std::string, std::string>>& pairs) {
  py::dict result;
  for (const auto& [label, text] : pairs) result[py::str(label)] = text;
  return result;
}

py::dict long_hold_provenance(const std::string& parameters, const std::string& hash,
                              std::optional<bool> at_soak_temperature) {
  std::optional<VolumeBasis> basis;
  if (at_soak_temperature)
    basis = *at_soak_temperature ? VolumeBasis::soak : VolumeBasis::room;
  return as_dict(provenance(parameters, hash, basis));
}

void bind_section(py::module_& m) {
  py::class_<ReportSection>(m, "ReportSection", "Sentences, then a table.")
      .def_readonly("title", &ReportSection::title, "Heading of the section.")
      .def_readonly("lines", &ReportSection::lines, "list of sentences.")
      .def_readonly("table", &ReportSection::table,
                    "list of rows of texts, the headings first; empty without table.")
      .def("__repr__",
           [](const ReportSection& s) { return "<ReportSection " + s.title + ">"; })
      .def(
          "__eq__",
          [](const ReportSection& a, const ReportSection& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const ReportSection& s) {
            return py::make_tuple(s.title, s.lines, s.table);
          },
          [](const py::tuple& t) {
            return ReportSection{t[0].cast<std::string>(),
                                 t[1].cast<std::vector<std::string>>(),
                                 t[2].cast<std::vector<std::vector<std::string>>>()};
          }));
}

void bind_functions(py::module_& m) {
  m.def("state_report",
        py::overload_cast<const State&, const HardeningOptions&>(&report),
        py::arg("state"), py::arg("quench"));
  m.def("state_report",
        py::overload_cast<const ShortSoak&, const HardeningOptions&>(&report),
        py::arg("state"), py::arg("quench"));
  m.def("state_title", &result_title, py::arg("state"));
  m.def("sweep_report",
        py::overload_cast<const Sweep&, const HardeningOptions&>(&report),
        py::arg("sweep"), py::arg("quench"));
  m.def("state_flag", py::overload_cast<const State&>(&result_flag), py::arg("state"));
  m.def("sweep_flag", py::overload_cast<const Sweep&>(&result_flag), py::arg("sweep"));
  m.def(
      "provenance", [](const State& state) { return as_dict(provenance(state)); },
      py::arg("state"));
  m.def(
      "estimates_provenance",
      [](const HardeningEstimates& estimates) {
        return as_dict(provenance(estimates));
      },
      py::arg("estimates"));
  m.def("long_hold_provenance", &long_hold_provenance, py::arg("parameters"),
        py::arg("parameters_hash"), py::arg("at_soak_temperature"));
}

}  // namespace

void bind_report(py::module_& m) {
  bind_section(m);
  py::class_<Report>(m, "Report", "One page that can be filed with a heat.")
      .def_readonly("title", &Report::title, "Steel and temperature.")
      .def_readonly("flag", &Report::flag,
                    "Empty; otherwise what is not usable or outside validity.")
      .def_readonly("sections", &Report::sections, "list of ReportSection.")
      .def_readonly("warnings", &Report::warnings, "list of texts with their codes.")
      .def_readonly("caution", &Report::caution,
                    "What to do before hardening real parts.")
      .def_property_readonly("text", &Report::text, "The page as plain text.")
      .def("__repr__", [](const Report& r) { return "<" + r.brief() + ">"; })
      .def("__str__", &Report::text)
      .def(
          "__eq__", [](const Report& a, const Report& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Report& r) {
            return py::make_tuple(r.title, r.flag, r.sections, r.warnings, r.caution);
          },
          [](const py::tuple& t) {
            return Report{t[0].cast<std::string>(), t[1].cast<std::string>(),
                          t[2].cast<std::vector<ReportSection>>(),
                          t[3].cast<std::vector<std::string>>(),
                          t[4].cast<std::string>()};
          }));
  bind_functions(m);
}

}  // namespace gibbsteel::python

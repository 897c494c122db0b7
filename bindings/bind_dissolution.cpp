/// Dissolution: the temperature above which a kind of phase is gone.

#include "gibbsteel/phase_changes.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

Dissolution run(const Steel& steel, const std::string& kind, Pair kelvin,
                const SoakOptions& options, SearchOptions search,
                const py::object& callback) {
  search.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return dissolution_temperature(steel, kind, range_of(kelvin), options, search);
}

Dissolution dissolution_from(const py::tuple& t) {
  Dissolution d;
  d.kind = t[0].cast<std::string>();
  d.status = enumerator(t[1], DissolutionStatus::not_known);
  d.temperature = temperature_of(t[2].cast<std::optional<double>>());
  d.intervals = t[3].cast<std::vector<PhaseField>>();
  d.text = t[4].cast<std::string>();
  if (t.size() == 5) {  // format 1
    const Temperature not_known = Temperature::kelvin(Occurrence::kUnknown);
    d.range = {not_known, not_known};
    return d;
  }
  d.steel = t[5].cast<std::string>();
  d.range = range_of(t[6].cast<Pair>());
  d.analysis = t[7].cast<MillAnalysis>();
  d.parameters = t[8].cast<std::string>();
  d.warnings = t[9].cast<std::vector<Warning>>();
  d.temperature_unit = unit_at(t, 10);
  d.uncertainty_at_least = number_at(t, 11);
  return d;
}

void bind_question(py::class_<Dissolution>& dissolution) {
  dissolution
      .def_readonly("steel", &Dissolution::steel, "Name of the steel; may be empty.")
      .def_readonly("analysis", &Dissolution::analysis, "The mill certificate.")
      .def_readonly("parameters", &Dissolution::parameters,
                    "Title and edition of the file.")
      .def_readonly("warnings", &Dissolution::warnings,
                    "list of SoakWarning: of both sides of the answer; where there is "
                    "none, of the ends of the range.");
}

}  // namespace

void bind_dissolution(py::module_& m) {
  py::class_<Dissolution> dissolution(
      m, "Dissolution",
      "The temperature above which a kind of phase is gone; None unless `status` is "
      "'found'.");
  def_temperature(dissolution, [](const Dissolution& d) { return d.temperature; });
  def_searched(dissolution, [](const Dissolution& d) { return d.range; });
  bind_question(dissolution);
  dissolution.def_readonly("kind", &Dissolution::kind, "Kind of phase.")
      .def_property_readonly(
          "status",
          [](const Dissolution& d) { return std::string(to_string(d.status)); },
          "'found', 'never present', 'still present' (at the high end) or 'not known'.")
      .def_readonly("intervals", &Dissolution::intervals,
                    "Where the kind is present: list of PhaseField.")
      .def_readonly("uncertainty_at_least", &Dissolution::uncertainty_at_least,
                    "[K] Of the temperature, as that of PhaseChange.")
      .def_readonly("text", &Dissolution::text, "The answer, or why there is none.")
      .def("__repr__",
           [](const Dissolution& d) { return "<Dissolution " + d.brief() + ">"; })
      .def("__str__", &Dissolution::full)
      .def(tagged_pickle(
          [](const Dissolution& d) {
            return py::make_tuple(
                d.kind, static_cast<int>(d.status), kelvins(d.temperature), d.intervals,
                d.text, d.steel, kelvins(d.range), d.analysis, d.parameters, d.warnings,
                static_cast<int>(d.temperature_unit), d.uncertainty_at_least);
          },
          &dissolution_from, 3));
  m.def("dissolution_temperature", &run, py::arg("steel"), py::arg("kind"),
        py::arg("kelvin"), py::arg("options"), py::arg("search"), py::arg("progress"));
}

}  // namespace gibbsteel::python

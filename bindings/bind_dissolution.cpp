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

}  // namespace

void bind_dissolution(py::module_& m) {
  py::class_<Dissolution> dissolution(
      m, "Dissolution",
      "The temperature above which a kind of phase is gone; None unless `status` is "
      "'found'.");
  def_temperature(dissolution, [](const Dissolution& d) { return d.temperature; });
  dissolution.def_readonly("kind", &Dissolution::kind, "Kind of phase.")
      .def_property_readonly(
          "status",
          [](const Dissolution& d) { return std::string(to_string(d.status)); },
          "'found', 'never present', 'still present' (at the high end) or 'not known'.")
      .def_readonly("intervals", &Dissolution::intervals,
                    "Where the kind is present: list of PhaseField.")
      .def_readonly("text", &Dissolution::text, "The answer, or why there is none.")
      .def("__repr__",
           [](const Dissolution& d) { return "<Dissolution " + d.brief() + ">"; })
      .def("__str__", &Dissolution::brief)
      .def(tagged_pickle(
          [](const Dissolution& d) {
            return py::make_tuple(d.kind, static_cast<int>(d.status),
                                  kelvins(d.temperature), d.intervals, d.text);
          },
          [](const py::tuple& t) {
            return Dissolution{t[0].cast<std::string>(),
                               enumerator(t[1], DissolutionStatus::not_known),
                               temperature_of(t[2].cast<std::optional<double>>()),
                               t[3].cast<std::vector<PhaseField>>(),
                               t[4].cast<std::string>()};
          }));
  m.def("dissolution_temperature", &run, py::arg("steel"), py::arg("kind"),
        py::arg("kelvin"), py::arg("options"), py::arg("search"), py::arg("progress"));
}

}  // namespace gibbsteel::python

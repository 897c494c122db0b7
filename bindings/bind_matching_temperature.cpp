/// MatchingTemperature: where another steel has the value of a reference.

#include "gibbsteel/matching_temperature.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

MatchingTemperature run(const State& reference, const Steel& steel,
                        const Quantity& quantity, Pair kelvin,
                        const SoakOptions& options, SearchOptions search,
                        const py::object& callback) {
  search.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return matching_temperature(reference, steel, quantity, range_of(kelvin), options,
                              search);
}

}  // namespace

void bind_matching_temperature(py::module_& m) {
  py::class_<MatchingTemperature> match(
      m, "MatchingTemperature",
      "The temperatures at which another steel has the value of a reference.");
  def_answers(match, [](const MatchingTemperature& x) { return x.search.crossings; });
  def_searched(match, [](const MatchingTemperature& x) { return x.search.range; });
  match.def_readonly("reference", &MatchingTemperature::reference, "A State.")
      .def_readonly("value", &MatchingTemperature::value,
                    "Of the quantity in `reference`.")
      .def_readonly("search", &MatchingTemperature::search,
                    "TemperatureSearch of the other steel: status and crossings.")
      .def_property_readonly("warnings", &MatchingTemperature::warnings,
                             "The distinct warnings of the reference, those of the "
                             "search, and of hardening estimates of two families.")
      .def(
          "to_frame",
          [](const py::object& self) {
            return py::module_::import("gibbsteel.target_frames")
                .attr("matching_temperature_to_frame")(self);
          },
          "Table (pandas): one row per crossing, with the reference.")
      .def("__repr__",
           [](const MatchingTemperature& x) { return "<" + x.brief() + ">"; })
      .def("__str__", &MatchingTemperature::full)
      .def(tagged_pickle(
          [](const MatchingTemperature& x) {
            return py::make_tuple(x.reference, x.value, x.search);
          },
          [](const py::tuple& t) {
            return MatchingTemperature{t[0].cast<State>(), t[1].cast<double>(),
                                       t[2].cast<TemperatureSearch>()};
          }));
  m.def("matching_temperature", &run, py::arg("reference"), py::arg("steel"),
        py::arg("quantity"), py::arg("kelvin"), py::arg("options"), py::arg("search"),
        py::arg("progress"));
}

}  // namespace gibbsteel::python

/// TemperatureSearch and Crossing: where a quantity has a value.

#include "gibbsteel/temperature_for.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "quantity_ends.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

TemperatureSearch run(const Steel& steel, const Quantity& quantity, double value,
                      Pair kelvin, const SoakOptions& options, SearchOptions search,
                      const py::object& callback) {
  search.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return temperature_for(steel, quantity, value, range_of(kelvin), options, search);
}

py::tuple crossing_state(const Crossing& c) {
  return py::make_tuple(c.temperature.in_kelvin(), c.bracket_width,
                        static_cast<int>(c.kind), c.rising, c.value, c.below, c.above,
                        c.state, c.uncertainty_at_least, c.slope, ends_of(c.band));
}

Crossing crossing_from(const py::tuple& t) {
  return {Temperature::kelvin(t[0].cast<double>()),
          t[1].cast<double>(),
          enumerator(t[2], CrossingKind::jump),
          t[3].cast<bool>(),
          t[4].cast<double>(),
          t[5].cast<double>(),
          t[6].cast<double>(),
          t[7].cast<State>(),
          number_at(t, 8),
          number_at(t, 9),
          ends_at(t, 10)};
}

void bind_crossing(py::module_& m) {
  py::class_<Crossing> crossing(m, "Crossing", "A temperature with the wanted value.");
  def_temperature(crossing, [](const Crossing& c) { return c.temperature; });
  crossing.def_readonly("bracket_width", &Crossing::bracket_width, "[K]")
      .def_property_readonly(
          "kind", [](const Crossing& c) { return std::string(to_string(c.kind)); },
          "'crossing', or 'jump': the quantity jumps across the value.")
      .def_readonly("rising", &Crossing::rising, "It grows with temperature.")
      .def_readonly("value", &Crossing::value, "Of `state`.")
      .def_readonly("below", &Crossing::below, "Value at the low end of the bracket.")
      .def_readonly("above", &Crossing::above, "Value at the high end of the bracket.")
      .def_readonly("state", &Crossing::state,
                    "The soak at this temperature; for a jump that below it.")
      .def_readonly("uncertainty_at_least", &Crossing::uncertainty_at_least,
                    "[K] One standard deviation of the temperature by those that the "
                    "file states, Eq. (B8); NaN when not known.")
      .def_readonly("slope", &Crossing::slope,
                    "Of the quantity [its unit/K]; NaN for a jump, and when not known.")
      .def_property_readonly(
          "band", [](const Crossing& c) { return ends_of(c.band); }, kBandOfCrossing)
      .def("__repr__",
           [](const Crossing& c) {
             return py::str("<Crossing at {:.0f} C: {}, {}>")
                 .format(c.temperature.in_celsius(), std::string(to_string(c.kind)),
                         c.rising ? "rising" : "falling");
           })
      .def(tagged_pickle(&crossing_state, &crossing_from, 3));
}

std::vector<Pair> equal_kelvins(const TemperatureSearch& s) {
  std::vector<Pair> all;
  for (const TemperatureRange& range : s.equal) all.push_back(kelvins(range));
  return all;
}

py::tuple value_at(const ValueAt& v) {
  return py::make_tuple(v.value, v.temperature.in_kelvin());
}

ValueAt value_from(const py::handle& h) {
  const auto pair = h.cast<Pair>();
  return {pair.first, Temperature::kelvin(pair.second)};
}

py::tuple search_state(const TemperatureSearch& s) {
  return py::make_tuple(s.steel, s.quantity, s.unit, s.target, kelvins(s.range),
                        static_cast<int>(s.status), s.crossings, equal_kelvins(s),
                        value_at(s.lowest), value_at(s.highest), s.gaps, s.soaks,
                        s.stopped, s.text, s.analysis, s.parameters, s.low, s.high,
                        s.by_family, static_cast<int>(s.temperature_unit),
                        s.of_quantity, s.no_value, ends_of(s.band_of_nearest));
}

TemperatureSearch search_from(const py::tuple& t) {
  TemperatureSearch s;
  s.steel = t[0].cast<std::string>();
  s.quantity = t[1].cast<std::string>();
  s.unit = t[2].cast<std::string>();
  s.target = t[3].cast<double>();
  s.range = range_of(t[4].cast<Pair>());
  s.status = enumerator(t[5], TargetStatus::jumps_over);
  s.crossings = t[6].cast<std::vector<Crossing>>();
  for (const Pair& pair : t[7].cast<std::vector<Pair>>())
    s.equal.push_back(range_of(pair));
  s.lowest = value_from(t[8]);
  s.highest = value_from(t[9]);
  s.gaps = t[10].cast<std::vector<PhaseGap>>();
  s.soaks = t[11].cast<std::size_t>();
  s.stopped = t[12].cast<std::string>();
  s.text = t[13].cast<std::string>();
  s.analysis = t[14].cast<MillAnalysis>();
  s.parameters = t[15].cast<std::string>();
  if (t.size() == 16) return s;  // format 1
  s.low = t[16].cast<State>();
  s.high = t[17].cast<State>();
  s.by_family = t[18].cast<bool>();
  s.temperature_unit = unit_at(t, 19);
  if (t.size() > 20) s.of_quantity = t[20].cast<std::vector<Warning>>();
  if (t.size() > 21) s.no_value = t[21].cast<std::vector<PhaseGap>>();
  s.band_of_nearest = ends_at(t, 22);
  return s;
}

using SearchClass = py::class_<TemperatureSearch>;

void bind_answer(SearchClass& search) {
  search
      .def_readonly("steel", &TemperatureSearch::steel,
                    "Name of the steel; may be empty.")
      .def_readonly("quantity", &TemperatureSearch::quantity, "Name of the quantity.")
      .def_readonly("unit", &TemperatureSearch::unit, "Of the quantity.")
      .def_readonly("target", &TemperatureSearch::target,
                    "The value that was asked for.")
      .def_property_readonly(
          "status",
          [](const TemperatureSearch& s) { return std::string(to_string(s.status)); },
          "'found', 'jumps over' (every crossing is a jump), 'never reached', 'always "
          "equal', 'not computable' or 'not known'.")
      .def_readonly("crossings", &TemperatureSearch::crossings,
                    "list of Crossing, upwards.")
      .def_property_readonly("equal_kelvin", &equal_kelvins,
                             "Where it has the value throughout: pairs of [K].")
      .def_property_readonly(
          "lowest", [](const TemperatureSearch& s) { return value_at(s.lowest); },
          "(value, temperature [K]) of the soak with the lowest value.")
      .def_property_readonly(
          "highest", [](const TemperatureSearch& s) { return value_at(s.highest); },
          "(value, temperature [K]) of the soak with the highest value.")
      .def_readonly("gaps", &TemperatureSearch::gaps,
                    "list of PhaseGap: nothing is known there.")
      .def_readonly("no_value", &TemperatureSearch::no_value,
                    "list of PhaseGap: where the quantity has no value, and why.")
      .def_readonly("soaks", &TemperatureSearch::soaks, "Number that the search took.")
      .def_readonly("stopped", &TemperatureSearch::stopped,
                    "Why the range was not searched to its end; else empty.")
      .def_readonly("text", &TemperatureSearch::text,
                    "The answer, or why there is none.")
      .def_readonly("analysis", &TemperatureSearch::analysis, "The mill certificate.")
      .def_readonly("parameters", &TemperatureSearch::parameters,
                    "Title and edition of the file.")
      .def_property_readonly("complete", &TemperatureSearch::complete,
                             "True when nothing in the range is unknown.");
}

void bind_ends(SearchClass& search) {
  def_band_of_nearest(search);
  search
      .def_property_readonly(
          "warnings", &TemperatureSearch::warnings,
          "The distinct warnings of the crossings; where there are none, of "
          "`low` and `high`.")
      .def_readonly("low", &TemperatureSearch::low,
                    "The soak at the low end of what was searched.")
      .def_readonly("high", &TemperatureSearch::high,
                    "The soak at the high end of what was searched.");
}

}  // namespace

void bind_temperature_search(py::module_& m) {
  bind_crossing(m);
  SearchClass search(m, "TemperatureSearch",
                     "All temperatures at which a quantity has a value.");
  def_answers(search, [](const TemperatureSearch& s) { return s.crossings; });
  def_searched(search, [](const TemperatureSearch& s) { return s.range; });
  bind_answer(search);
  bind_ends(search);
  search
      .def(
          "to_frame",
          [](const py::object& self) {
            return py::module_::import("gibbsteel.target_frames")
                .attr("temperature_search_to_frame")(self);
          },
          "Table (pandas): one row per crossing.")
      .def("__repr__", [](const TemperatureSearch& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &TemperatureSearch::full)
      .def(tagged_pickle(&search_state, &search_from, 4));
  m.def("temperature_for", &run, py::arg("steel"), py::arg("quantity"),
        py::arg("value"), py::arg("kelvin"), py::arg("options"), py::arg("search"),
        py::arg("progress"));
}

}  // namespace gibbsteel::python

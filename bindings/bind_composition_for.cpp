/// CompositionSearch: how much of one element gives a wanted value.

#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/composition_for.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "quantity_ends.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

py::tuple pair_of(const WeightPercentRange& range) {
  return py::make_tuple(range.low, range.high);
}

WeightPercentRange range_of(const py::handle& pair) {
  const auto t = pair.cast<py::tuple>();
  return {t[0].cast<double>(), t[1].cast<double>()};
}

py::list pairs_of(const std::vector<WeightPercentRange>& ranges) {
  py::list list;
  for (const WeightPercentRange& range : ranges) list.append(pair_of(range));
  return list;
}

py::tuple crossing_state(const CompositionCrossing& c) {
  return py::make_tuple(c.weight_percent, c.bracket_width, static_cast<int>(c.kind),
                        c.rising, c.value, c.below, c.above, c.state, c.slope,
                        ends_of(c.band));
}

CompositionCrossing crossing_from(const py::tuple& t) {
  return {
      t[0].cast<double>(), t[1].cast<double>(), enumerator(t[2], CrossingKind::jump),
      t[3].cast<bool>(),   t[4].cast<double>(), t[5].cast<double>(),
      t[6].cast<double>(), t[7].cast<State>(),  number_at(t, 8),
      ends_at(t, 9)};
}

void bind_crossing(py::module_& m) {
  using Crossing = CompositionCrossing;
  py::class_<Crossing>(m, "CompositionCrossing",
                       "A composition at which the quantity has the value.")
      .def_readonly("weight_percent", &Crossing::weight_percent,
                    "Of the element [wt%].")
      .def_readonly("bracket_width", &Crossing::bracket_width, "[wt%]")
      .def_property_readonly(
          "kind", [](const Crossing& c) { return std::string(to_string(c.kind)); },
          "'crossing', or 'jump': the quantity jumps across the value.")
      .def_readonly("rising", &Crossing::rising, "The quantity grows with the element.")
      .def_readonly("value", &Crossing::value, "Of `state`.")
      .def_readonly("below", &Crossing::below, "At the low end of the bracket.")
      .def_readonly("above", &Crossing::above, "At the high end of the bracket.")
      .def_readonly("state", &Crossing::state,
                    "The soak at this composition; for a jump that with less.")
      .def_readonly(
          "slope", &Crossing::slope,
          "Of the quantity [its unit/wt%]; NaN for a jump, and when not known.")
      .def_property_readonly(
          "band", [](const Crossing& c) { return ends_of(c.band); }, kBandOfCrossing)
      .def("__repr__",
           [](const Crossing& c) {
             return py::str("<CompositionCrossing at {:.4f} wt%: {}, {}>")
                 .format(c.weight_percent, std::string(to_string(c.kind)),
                         c.rising ? "rising" : "falling");
           })
      .def(tagged_pickle(&crossing_state, &crossing_from, 2));
}

py::list gap_list(const std::vector<PercentGap>& gaps) {
  py::list all;
  for (const PercentGap& gap : gaps)
    all.append(py::make_tuple(gap.low, gap.high, gap.reason));
  return all;
}

std::vector<PercentGap> gaps_of(const py::handle& all) {
  std::vector<PercentGap> gaps;
  for (const auto& item : all) {
    const auto gap = item.cast<py::tuple>();
    gaps.push_back(
        {gap[0].cast<double>(), gap[1].cast<double>(), gap[2].cast<std::string>()});
  }
  return gaps;
}

py::tuple get_state(const CompositionSearch& s) {
  return py::make_tuple(
      s.steel, s.element, s.quantity, s.unit, s.target, s.temperature.in_kelvin(),
      pair_of(s.range), static_cast<int>(s.status), s.crossings, pairs_of(s.equal),
      py::make_tuple(s.lowest.value, s.lowest.weight_percent),
      py::make_tuple(s.highest.value, s.highest.weight_percent), gap_list(s.gaps),
      s.soaks, s.stopped, s.text, s.analysis, s.parameters, s.low, s.high, s.by_family,
      static_cast<int>(s.temperature_unit), s.of_quantity, gap_list(s.no_value),
      ends_of(s.band_of_nearest));
}

ValueAtPercent value_at(const py::handle& pair) {
  const auto t = pair.cast<py::tuple>();
  return {t[0].cast<double>(), t[1].cast<double>()};
}

CompositionSearch set_state(const py::tuple& t) {
  CompositionSearch s;
  s.steel = t[0].cast<std::string>();
  s.element = t[1].cast<std::string>();
  s.quantity = t[2].cast<std::string>();
  s.unit = t[3].cast<std::string>();
  s.target = t[4].cast<double>();
  s.temperature = Temperature::kelvin(t[5].cast<double>());
  s.range = range_of(t[6]);
  s.status = enumerator(t[7], TargetStatus::jumps_over);
  s.crossings = t[8].cast<std::vector<CompositionCrossing>>();
  for (const auto& pair : t[9]) s.equal.push_back(range_of(pair));
  s.lowest = value_at(t[10]);
  s.highest = value_at(t[11]);
  s.gaps = gaps_of(t[12]);
  s.soaks = t[13].cast<std::size_t>();
  s.stopped = t[14].cast<std::string>();
  s.text = t[15].cast<std::string>();
  s.analysis = t[16].cast<MillAnalysis>();
  s.parameters = t[17].cast<std::string>();
  if (t.size() == 18) return s;  // format 1
  s.low = t[18].cast<State>();
  s.high = t[19].cast<State>();
  s.by_family = t[20].cast<bool>();
  s.temperature_unit = unit_at(t, 21);
  if (t.size() > 22) s.of_quantity = t[22].cast<std::vector<Warning>>();
  if (t.size() > 23) s.no_value = gaps_of(t[23]);
  s.band_of_nearest = ends_at(t, 24);
  return s;
}

using SearchClass = py::class_<CompositionSearch>;

void bind_question(SearchClass& search) {
  using Search = CompositionSearch;
  search.def_readonly("steel", &Search::steel, "Name of the steel; may be empty.")
      .def_readonly("element", &Search::element,
                    "Symbol of the element that is searched.")
      .def_readonly("quantity", &Search::quantity, "Name of the quantity.")
      .def_readonly("unit", &Search::unit, "Unit; empty for a pure number.")
      .def_readonly("target", &Search::target, "The value that was asked for.")
      .def_property_readonly(
          "celsius", [](const Search& s) { return celsius_of(s.temperature); },
          "Temperature [C].")
      .def_property_readonly(
          "range", [](const Search& s) { return pair_of(s.range); },
          "(low, high) of the element [wt%].");
}

void bind_ends(SearchClass& search) {
  using Search = CompositionSearch;
  def_band_of_nearest(search);
  search
      .def_property_readonly("warnings", &Search::warnings,
                             "The distinct warnings of the crossings; where there are "
                             "none, of `low` and `high`.")
      .def_readonly("low", &Search::low,
                    "The soak at the low end of what was searched.")
      .def_readonly("high", &Search::high,
                    "The soak at the high end of what was searched.");
}

void bind_answer(SearchClass& search) {
  using Search = CompositionSearch;
  search
      .def_property_readonly(
          "status", [](const Search& s) { return std::string(to_string(s.status)); },
          "'found', 'jumps over' (every crossing is a jump), 'never reached', 'always "
          "equal', 'not computable' or 'not known'.")
      .def_readonly("crossings", &Search::crossings, "Upwards.")
      .def_property_readonly(
          "weight_percents",
          [](const Search& s) {
            py::list list;
            for (const auto& crossing : s.crossings)
              list.append(crossing.weight_percent);
            return list;
          },
          "Those of the crossings, jumps included.")
      .def_property_readonly(
          "equal", [](const Search& s) { return pairs_of(s.equal); },
          "Stretches (low, high) that have the value throughout [wt%].")
      .def_property_readonly(
          "lowest", [](const Search& s) { return s.lowest.value; },
          "Lowest value met in the range.")
      .def_property_readonly(
          "highest", [](const Search& s) { return s.highest.value; },
          "Highest value met in the range.")
      .def_readonly("soaks", &Search::soaks, "That the search took.")
      .def_readonly("stopped", &Search::stopped,
                    "Why the range was not searched to its end; else empty.")
      .def_readonly("text", &Search::text, "One sentence.")
      .def_property_readonly("complete", &Search::complete,
                             "True: the whole range was searched.")
      .def("__repr__", [](const Search& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &Search::full)
      .def(tagged_pickle(&get_state, &set_state, 4));
}

CompositionSearch run(const Steel& steel, const std::string& element,
                      const Quantity& quantity, double value, double low, double high,
                      double kelvin, const SoakOptions& options, std::size_t steps,
                      double tolerance, std::size_t most_soaks,
                      const py::object& callback) {
  const CompositionSearchOptions search{steps, tolerance, most_soaks,
                                        progress_of(callback)};
  const py::gil_scoped_release release;
  return composition_for(steel, element, quantity, value, {low, high},
                         Temperature::kelvin(kelvin), options, search);
}

}  // namespace

void bind_composition_for(py::module_& m) {
  bind_crossing(m);
  SearchClass search(m, "CompositionSearch",
                     "All weight percents of one element at which a quantity has a "
                     "value.");
  bind_question(search);
  bind_answer(search);
  bind_ends(search);
  const CompositionSearchOptions usual;
  m.def("composition_for", &run, py::arg("steel"), py::arg("element"),
        py::arg("quantity"), py::arg("value"), py::arg("low"), py::arg("high"),
        py::arg("kelvin"), py::arg("options"), py::arg("steps") = usual.steps,
        py::arg("tolerance") = usual.tolerance,
        py::arg("most_soaks") = usual.most_soaks, py::arg("progress") = py::none());
}

}  // namespace gibbsteel::python

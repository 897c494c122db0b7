/// SearchOptions, and the parts of a range: PhaseField and PhaseGap.

#include "counts.hpp"
#include "gibbsteel/phase_changes.hpp"
#include "pickling.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

SearchOptions make_options(double node_spacing, double tolerance,
                           const py::object& most_soaks) {
  return {node_spacing, tolerance, count_of(most_soaks, "most_soaks"), {}};
}

std::string joined(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : " + ") + name;
  return text;
}

py::str span(const Temperature& low, const Temperature& high, const std::string& what) {
  return py::str("{:.0f} to {:.0f} C: {}")
      .format(low.in_celsius(), high.in_celsius(), what);
}

TemperatureRange range_of_field(const PhaseField& f) { return {f.low, f.high}; }
TemperatureRange range_of_gap(const PhaseGap& g) { return {g.low, g.high}; }

void bind_field(py::module_& m) {
  py::class_<PhaseField> field(m, "PhaseField",
                               "A stretch of temperatures with one set of phases, or "
                               "with one kind of phase; (low, high) in each unit.");
  def_temperature(field, range_of_field);
  def_equality(field);
  field
      .def_property_readonly(
          "low_edge",
          [](const PhaseField& f) { return std::string(to_string(f.low_edge)); },
          "'change', 'range' (the end of what was searched) or 'gap'.")
      .def_property_readonly(
          "high_edge",
          [](const PhaseField& f) { return std::string(to_string(f.high_edge)); },
          "'change', 'range' (the end of what was searched) or 'gap'.")
      .def_readonly("phases", &PhaseField::phases, "Kinds, in the order of the file.")
      .def("__repr__",
           [](const PhaseField& f) {
             return py::str("<PhaseField {}>")
                 .format(span(f.low, f.high, joined(f.phases)));
           })
      .def(tagged_pickle(
          [](const PhaseField& f) {
            return py::make_tuple(kelvins(range_of_field(f)),
                                  static_cast<int>(f.low_edge),
                                  static_cast<int>(f.high_edge), f.phases);
          },
          [](const py::tuple& t) {
            const TemperatureRange range = range_of(t[0].cast<Pair>());
            return PhaseField{range.low, range.high, enumerator(t[1], Edge::gap),
                              enumerator(t[2], Edge::gap),
                              t[3].cast<std::vector<std::string>>()};
          }));
}

void bind_gap(py::module_& m) {
  py::class_<PhaseGap> gap(m, "PhaseGap",
                           "Temperatures at which nothing is known; (low, high).");
  def_temperature(gap, range_of_gap);
  def_equality(gap);
  gap.def_readonly("reason", &PhaseGap::reason, "One sentence.")
      .def("__repr__",
           [](const PhaseGap& g) {
             return py::str("<PhaseGap {}>").format(span(g.low, g.high, g.reason));
           })
      .def(tagged_pickle(
          [](const PhaseGap& g) {
            return py::make_tuple(kelvins(range_of_gap(g)), g.reason);
          },
          [](const py::tuple& t) {
            const TemperatureRange range = range_of(t[0].cast<Pair>());
            return PhaseGap{range.low, range.high, t[1].cast<std::string>()};
          }));
}

void bind_options(py::module_& m) {
  const SearchOptions defaults;
  py::class_<SearchOptions>(m, "SearchOptions",
                            "Settings of a search for temperatures.")
      .def(py::init(&make_options), py::kw_only(),
           py::arg("node_spacing") = defaults.node_spacing,
           py::arg("tolerance") = defaults.tolerance,
           py::arg("most_soaks") = defaults.most_soaks)
      .def_readonly("node_spacing", &SearchOptions::node_spacing,
                    "Of the soaks that the search starts from [K].")
      .def_readonly("tolerance", &SearchOptions::tolerance,
                    "To which a temperature is located [K].")
      .def_readonly("most_soaks", &SearchOptions::most_soaks,
                    "The search stops there and says so.")
      .def(
          "__eq__",
          [](const SearchOptions& a, const SearchOptions& b) {
            return a.node_spacing == b.node_spacing && a.tolerance == b.tolerance &&
                   a.most_soaks == b.most_soaks;
          },
          py::is_operator())
      .def("__repr__",
           [](const SearchOptions& o) {
             return py::str(
                        "SearchOptions(node_spacing={:g}, tolerance={:g}, "
                        "most_soaks={})")
                 .format(o.node_spacing, o.tolerance, o.most_soaks);
           })
      .def(tagged_pickle(
          [](const SearchOptions& o) {
            return py::make_tuple(o.node_spacing, o.tolerance, o.most_soaks);
          },
          [](const py::tuple& t) {
            return make_options(t[0].cast<double>(), t[1].cast<double>(),
                                py::int_(t[2].cast<std::size_t>()));
          }));
}

}  // namespace

void bind_search_options(py::module_& m) {
  bind_options(m);
  bind_field(m);
  bind_gap(m);
  m.def(
      "usual_range",
      [](const std::shared_ptr<ParameterSet>& set) {
        return kelvins(usual_range(*set));
      },
      py::arg("parameters"), "The range that is searched when none is given [K].");
}

}  // namespace gibbsteel::python

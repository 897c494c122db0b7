/// Comparison: steels or soaks side by side.

#include "common.hpp"
#include "gibbsteel/comparison.hpp"
#include "pickling.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

/// Of a pickle that may be damaged.
void check_band(const ComparisonRow& row) {
  const bool none = row.low.empty() && row.high.empty();
  const std::size_t states = row.values.size();
  if (!none && (row.low.size() != states || row.high.size() != states))
    throw py::value_error("a band has another length than the values");
}

void check_lengths(const Comparison& comparison) {
  const std::size_t states = comparison.states.size();
  for (const ComparisonRow& row : comparison.rows)
    if (row.values.size() != states)
      throw py::value_error("a row has another length than the states");
  const std::size_t told = comparison.of_quantities.size();
  if (told != 0 && told != states)
    throw py::value_error("the warnings have another length than the states");
}

ComparisonRow row_from(const py::tuple& t, int format) {
  using Numbers = std::vector<double>;
  ComparisonRow row{
      t[0].cast<std::string>(), t[1].cast<std::string>(), t[2].cast<Numbers>(), {}, {}};
  if (format < 2) return row;  // before there were bands
  row.low = t[3].cast<Numbers>();
  row.high = t[4].cast<Numbers>();
  check_band(row);
  return row;
}

void bind_row(py::module_& m) {
  py::class_<ComparisonRow>(m, "ComparisonRow",
                            "One number of every state that is compared.")
      .def_readonly("name", &ComparisonRow::name,
                    "For instance ``\"C in the matrix\"``.")
      .def_readonly("unit", &ComparisonRow::unit,
                    "Such as ``\"wt%\"``; empty for a pure number.")
      .def_property_readonly("label", &ComparisonRow::label, "Name with the unit.")
      .def_readonly("values", &ComparisonRow::values, "One per state.")
      .def_readonly("low", &ComparisonRow::low,
                    "Low end of the band, one per state; empty for what has none.")
      .def_readonly("high", &ComparisonRow::high,
                    "High end of the band, one per state; empty for what has none.")
      .def("__repr__",
           [](const ComparisonRow& r) { return "<ComparisonRow " + r.label() + ">"; })
      .def(
          "__eq__",
          [](const ComparisonRow& a, const ComparisonRow& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const ComparisonRow& r) {
            return py::make_tuple(r.name, r.unit, r.values, r.low, r.high);
          },
          &row_from, 2));
}

py::tuple get_state(const Comparison& c) {
  return py::make_tuple(c.states, c.rows, c.by_family,
                        static_cast<int>(c.temperature_unit), c.of_quantities);
}

Comparison set_state(const py::tuple& t) {
  Comparison comparison{t[0].cast<std::vector<State>>(),
                        t[1].cast<std::vector<ComparisonRow>>(),
                        t.size() > 2 && t[2].cast<bool>(), unit_at(t, 3),
                        t.size() > 4 ? t[4].cast<std::vector<std::vector<Warning>>>()
                                     : std::vector<std::vector<Warning>>{}};
  check_lengths(comparison);
  return comparison;
}

}  // namespace

void bind_comparison(py::module_& m) {
  bind_row(m);
  py::class_<Comparison>(m, "Comparison", "Steels, or soaks of one, side by side.")
      .def_readonly("states", &Comparison::states, "In the order given.")
      .def_readonly("rows", &Comparison::rows,
                    "Carbides by kind and together, elements of the matrix, carbon "
                    "activity, then the quantities that were asked for.")
      .def_property_readonly("warnings", &Comparison::warnings,
                             "The distinct warnings of all states, and of hardening "
                             "estimates among the rows: list of SoakWarning.")
      .def("warnings_of", &Comparison::warnings_of, py::arg("i"),
           "Those that bear on one state, by its number.")
      .def("__getitem__", &Comparison::row, "A row by its name.")
      .def("__len__", [](const Comparison& c) { return c.states.size(); })
      .def("__repr__", [](const Comparison& c) { return "<" + c.brief() + ">"; })
      .def("__str__", &Comparison::full)
      .def(tagged_pickle(&get_state, &set_state, 3));
  m.def(
      "compare",
      [](const std::vector<State>& states, const std::vector<Quantity>& quantities,
         const std::string& unit) {
        Comparison result = compare(states, quantities);
        result.temperature_unit = temperature_unit(unit);
        return result;
      },
      py::arg("states"), py::arg("quantities"), py::arg("temperature_unit"),
      py::call_guard<py::gil_scoped_release>());
}

}  // namespace gibbsteel::python

/// MeltingRange: solidus and liquidus.

#include "gibbsteel/melting.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

MeltingRange run(const Steel& steel, Pair kelvin, const SoakOptions& options,
                 SearchOptions search, const py::object& callback) {
  search.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return melting_range(steel, range_of(kelvin), options, search);
}

using MeltingClass = py::class_<MeltingRange>;
using End = std::optional<Temperature> MeltingRange::*;

/// `solidus_celsius` and the like.
void def_end(MeltingClass& melting, const std::string& name, End end) {
  for_each_unit([&](const char* unit_name, Unit unit) {
    melting.def_property_readonly(
        (name + "_" + unit_name).c_str(),
        [end, unit](const MeltingRange& m) { return in_unit(m.*end, unit); },
        "None where there is none: see `status` and `text`.");
  });
}

void bind_content(MeltingClass& melting) {
  melting
      .def_readonly("steel", &MeltingRange::steel, "Name of the steel; may be empty.")
      .def_property_readonly(
          "status",
          [](const MeltingRange& m) { return std::string(to_string(m.status)); },
          "'found', 'solidus only', 'liquidus only', 'partly molten', 'solid', "
          "'molten', 'no liquid' or 'not known'.")
      .def_readonly("solids_at_solidus", &MeltingRange::solids_at_solidus,
                    "Kinds just below the solidus; empty without one.")
      .def_readonly("primary_solids", &MeltingRange::primary_solids,
                    "Kinds that melt last; empty without a liquidus.")
      .def_readonly("at_solidus", &MeltingRange::at_solidus,
                    "State just above: it holds the first liquid.")
      .def_readonly("at_liquidus", &MeltingRange::at_liquidus,
                    "State just below: it holds the last solid.")
      .def_readonly("fields", &MeltingRange::fields,
                    "list of PhaseField, upwards, of the whole range.")
      .def_readonly("text", &MeltingRange::text, "The answer, or why there is none.")
      .def_readonly("analysis", &MeltingRange::analysis, "The mill certificate.")
      .def_readonly("parameters", &MeltingRange::parameters,
                    "Title and edition of the file.")
      .def_readonly(
          "warnings", &MeltingRange::noted,
          "The distinct warnings of both states, or of the ends of the range.");
}

py::tuple melting_state(const MeltingRange& m) {
  return py::make_tuple(m.steel, kelvins(m.range), static_cast<int>(m.status),
                        kelvins(m.solidus), kelvins(m.liquidus), m.solids_at_solidus,
                        m.primary_solids, m.at_solidus, m.at_liquidus, m.fields, m.text,
                        m.analysis, m.parameters, m.noted,
                        static_cast<int>(m.temperature_unit));
}

MeltingRange melting_from(const py::tuple& t) {
  using Names = std::vector<std::string>;
  MeltingRange m;
  m.steel = t[0].cast<std::string>();
  m.range = range_of(t[1].cast<Pair>());
  m.status = enumerator(t[2], MeltingStatus::not_known);
  m.solidus = temperature_of(t[3].cast<std::optional<double>>());
  m.liquidus = temperature_of(t[4].cast<std::optional<double>>());
  m.solids_at_solidus = t[5].cast<Names>();
  m.primary_solids = t[6].cast<Names>();
  m.at_solidus = t[7].cast<State>();
  m.at_liquidus = t[8].cast<State>();
  m.fields = t[9].cast<std::vector<PhaseField>>();
  m.text = t[10].cast<std::string>();
  m.analysis = t[11].cast<MillAnalysis>();
  m.parameters = t[12].cast<std::string>();
  m.noted = t[13].cast<std::vector<Warning>>();
  m.temperature_unit = unit_at(t, 14);
  return m;
}

}  // namespace

void bind_melting(py::module_& m) {
  MeltingClass melting(m, "MeltingRange", "Between which temperatures a steel melts.");
  def_searched(melting, [](const MeltingRange& x) { return x.range; });
  def_end(melting, "solidus", &MeltingRange::solidus);
  def_end(melting, "liquidus", &MeltingRange::liquidus);
  bind_content(melting);
  melting.def("__repr__", [](const MeltingRange& x) { return "<" + x.brief() + ">"; })
      .def("__str__", &MeltingRange::full)
      .def(tagged_pickle(&melting_state, &melting_from, 2));
  m.def(
      "melting_search_range",
      [](const std::shared_ptr<ParameterSet>& set) {
        return kelvins(melting_search_range(*set));
      },
      py::arg("parameters"), "The range that is searched when none is given [K].");
  m.def("melting_range", &run, py::arg("steel"), py::arg("kelvin"), py::arg("options"),
        py::arg("search"), py::arg("progress"));
}

}  // namespace gibbsteel::python

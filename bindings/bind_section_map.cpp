/// SectionMap: which phases are stable where.

#include "common.hpp"
#include "counts.hpp"
#include "degrees.hpp"
#include "gibbsteel/section_map.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

SectionOptions section_options(double temperature_tolerance, double percent_tolerance,
                               const py::object& columns, const py::object& rows,
                               const py::object& most_soaks,
                               const py::object& threads) {
  SectionOptions options;
  options.temperature_tolerance = temperature_tolerance;
  options.percent_tolerance = percent_tolerance;
  options.columns = count_of(columns, "columns");
  options.rows = count_of(rows, "rows");
  options.most_soaks = count_of(most_soaks, "most_soaks");
  options.threads = count_of(threads, "threads");
  return options;
}

using Range = std::pair<double, double>;

SectionMap over_temperature(const Steel& steel, const std::string& element,
                            const Range& percent, const Range& kelvin,
                            const SoakOptions& soak, SectionOptions options,
                            const py::object& callback) {
  options.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return section_map(
      steel, {element, percent.first, percent.second},
      {Temperature::kelvin(kelvin.first), Temperature::kelvin(kelvin.second)}, soak,
      options);
}

SectionMap over_elements(const Steel& steel, const std::string& first,
                         const Range& first_percent, const std::string& second,
                         const Range& second_percent, double kelvin,
                         const SoakOptions& soak, SectionOptions options,
                         const py::object& callback) {
  options.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return section_map(steel,
                     SweptElement{first, first_percent.first, first_percent.second},
                     SweptElement{second, second_percent.first, second_percent.second},
                     Temperature::kelvin(kelvin), soak, options);
}

std::optional<double> celsius(const SectionMap& map) {
  if (!map.temperature) return std::nullopt;
  return celsius_of(*map.temperature);
}

py::tuple get_state(const SectionMap& m) {
  std::optional<double> kelvin;
  if (m.temperature) kelvin = m.temperature->in_kelvin();
  return py::make_tuple(m.steel, m.analysis, m.x, m.y, kelvin, m.x_tolerance,
                        m.y_tolerance, m.boundaries, m.fields, m.nodes, m.gaps,
                        m.warnings, m.parameters, m.parameters_hash, m.soaks, m.stopped,
                        static_cast<int>(m.temperature_unit));
}

SectionMap set_state(const py::tuple& t) {
  SectionMap m;
  m.steel = t[0].cast<std::string>();
  m.analysis = t[1].cast<MillAnalysis>();
  m.x = t[2].cast<SectionAxis>();
  m.y = t[3].cast<SectionAxis>();
  if (const auto kelvin = t[4].cast<std::optional<double>>())
    m.temperature = Temperature::kelvin(*kelvin);
  m.x_tolerance = t[5].cast<double>();
  m.y_tolerance = t[6].cast<double>();
  m.boundaries = t[7].cast<std::vector<SectionBoundary>>();
  m.fields = t[8].cast<std::vector<SectionField>>();
  m.nodes = t[9].cast<std::vector<SectionNode>>();
  m.gaps = t[10].cast<std::vector<SectionGap>>();
  m.warnings = t[11].cast<std::vector<Warning>>();
  m.parameters = t[12].cast<std::string>();
  m.parameters_hash = t[13].cast<std::string>();
  m.soaks = t[14].cast<std::size_t>();
  m.stopped = t[15].cast<std::string>();
  m.temperature_unit = unit_at(t, 16);
  return m;
}

void bind_options(py::module_& m) {
  const SectionOptions usual;
  py::class_<SectionOptions>(m, "SectionOptions", "Settings of a section map.")
      .def(py::init(&section_options), py::kw_only(),
           py::arg("temperature_tolerance") = usual.temperature_tolerance,
           py::arg("percent_tolerance") = usual.percent_tolerance,
           py::arg("columns") = usual.columns, py::arg("rows") = usual.rows,
           py::arg("most_soaks") = usual.most_soaks, py::arg("threads") = usual.threads)
      .def_readonly("temperature_tolerance", &SectionOptions::temperature_tolerance,
                    "What a boundary may be off [K].")
      .def_readonly("percent_tolerance", &SectionOptions::percent_tolerance,
                    "What a boundary may be off [wt%].")
      .def_readonly("columns", &SectionOptions::columns, "Of the mesh at the start.")
      .def_readonly("rows", &SectionOptions::rows, "Of the mesh at the start.")
      .def_readonly("most_soaks", &SectionOptions::most_soaks,
                    "The search stops there and says so.")
      .def_readonly("threads", &SectionOptions::threads, "0: all cores.")
      .def("__repr__", [](const SectionOptions& o) {
        return "<SectionOptions " + std::to_string(o.columns) + " x " +
               std::to_string(o.rows) + ">";
      });
}

using Class = py::class_<SectionMap>;

void bind_conditions(Class& map) {
  using M = SectionMap;
  map.def_readonly("steel", &M::steel, "Name of the steel; may be empty.")
      .def_readonly("analysis", &M::analysis, "Of the steel that the axes change.")
      .def_readonly("x", &M::x, "The axis to the right.")
      .def_readonly("y", &M::y, "The axis upwards.")
      .def_property_readonly("celsius", &celsius,
                             "Temperature of a map over two elements [C]; else None.")
      .def_readonly("x_tolerance", &M::x_tolerance, "[unit of x]")
      .def_readonly("y_tolerance", &M::y_tolerance, "[unit of y]")
      .def_readonly("parameters", &M::parameters, "Title and edition.")
      .def_readonly("parameters_hash", &M::parameters_hash,
                    "ParameterSet.content_hash of the file.");
}

std::optional<SectionField> field_at(const SectionMap& map, double x, double y) {
  const SectionField* field = map.field_at({x, y});
  if (!field) return std::nullopt;
  return *field;
}

void bind_results(Class& map) {
  using M = SectionMap;
  map.def_readonly("boundaries", &M::boundaries, "list of SectionBoundary.")
      .def_readonly("fields", &M::fields, "Largest first.")
      .def_readonly("nodes", &M::nodes, "Points where boundaries meet.")
      .def_readonly("gaps", &M::gaps, "Regions of which nothing is known.")
      .def_readonly("warnings", &M::warnings, "list of SoakWarning.")
      .def_readonly("soaks", &M::soaks, "Soaks that the search took.")
      .def_readonly("stopped", &M::stopped, "Why it is not complete; else empty.")
      .def_property_readonly("complete", &M::complete,
                             "True when nothing in the map is unknown.")
      .def("field_at", &field_at, py::arg("x"), py::arg("y"),
           "The field that holds a point, or None.");
}

py::object to_frame(const py::object& map) {
  return py::module_::import("gibbsteel.section_frames").attr("section_to_frame")(map);
}

}  // namespace

void bind_section_map(py::module_& m) {
  bind_options(m);
  Class map(m, "SectionMap", "Which phases are stable where.");
  bind_conditions(map);
  bind_results(map);
  map.def("to_frame", &to_frame, "Points of all boundaries (pandas).")
      .def("__repr__", [](const SectionMap& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &SectionMap::full)
      .def(tagged_pickle(&get_state, &set_state, 2));
  m.def("section_over_temperature", &over_temperature, py::arg("steel"),
        py::arg("element"), py::arg("percent"), py::arg("kelvin"), py::arg("soak"),
        py::arg("options"), py::arg("progress"), "Temperature against one element.");
  m.def("section_over_elements", &over_elements, py::arg("steel"), py::arg("first"),
        py::arg("first_percent"), py::arg("second"), py::arg("second_percent"),
        py::arg("kelvin"), py::arg("soak"), py::arg("options"), py::arg("progress"),
        "Two elements at one temperature.");
}

}  // namespace gibbsteel::python

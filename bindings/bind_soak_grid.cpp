/// SoakGrid and SweptVariable: soaks over two swept variables.

#include <algorithm>

#include "arrays.hpp"
#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/soak_grid.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

using Class = py::class_<SoakGrid>;

std::size_t index_of(py::ssize_t i, std::size_t size) {
  const auto count = static_cast<py::ssize_t>(size);
  const py::ssize_t k = i < 0 ? i + count : i;
  if (k < 0 || k >= count) throw py::index_error("grid index out of range");
  return static_cast<std::size_t>(k);
}

std::optional<State> item(const SoakGrid& grid,
                          const std::pair<py::ssize_t, py::ssize_t>& cell) {
  return grid.at(index_of(cell.first, grid.rows()),
                 index_of(cell.second, grid.columns()));
}

std::vector<std::optional<State>> row(const SoakGrid& grid, py::ssize_t i) {
  const auto begin =
      grid.states.begin() +
      static_cast<std::ptrdiff_t>(index_of(i, grid.rows()) * grid.columns());
  return {begin, begin + static_cast<std::ptrdiff_t>(grid.columns())};
}

py::array_t<double> array(const SoakGrid& grid, const Quantity& quantity) {
  return read_only(grid.array(quantity), {static_cast<py::ssize_t>(grid.rows()),
                                          static_cast<py::ssize_t>(grid.columns())});
}

SoakGrid run_grid(const Steel& steel, const SweptVariable& first,
                  const SweptVariable& second, std::optional<double> kelvin,
                  const SoakOptions& options, const py::object& callback) {
  std::optional<Temperature> at;
  if (kelvin) at = Temperature::kelvin(*kelvin);
  const auto progress = progress_of(callback);
  const py::gil_scoped_release release;
  return soak_grid(steel, first, second, at, options, progress);
}

std::optional<double> celsius(const SoakGrid& grid) {
  if (!grid.temperature) return std::nullopt;
  return celsius_of(*grid.temperature);
}

py::tuple get_state(const SoakGrid& g) {
  std::optional<double> kelvin;
  if (g.temperature) kelvin = g.temperature->in_kelvin();
  return py::make_tuple(g.steel, g.analysis, g.first, g.second, kelvin, g.parameters,
                        g.parameters_hash, g.states,
                        static_cast<int>(g.temperature_unit));
}

SoakGrid set_state(const py::tuple& t) {
  SoakGrid g;
  g.steel = t[0].cast<std::string>();
  g.analysis = t[1].cast<MillAnalysis>();
  g.first = t[2].cast<SweptVariable>();
  g.second = t[3].cast<SweptVariable>();
  if (const auto kelvin = t[4].cast<std::optional<double>>())
    g.temperature = Temperature::kelvin(*kelvin);
  g.parameters = t[5].cast<std::string>();
  g.parameters_hash = t[6].cast<std::string>();
  g.states = t[7].cast<std::vector<std::optional<State>>>();
  g.temperature_unit = unit_at(t, 8);
  return g;
}

SweptVariable swept_element(const std::string& element,
                            std::vector<double> weight_percent) {
  return SweptVariable::element(element, std::move(weight_percent));
}

SweptVariable swept_temperature(const std::vector<double>& kelvin) {
  std::vector<Temperature> values;
  for (const double value : kelvin) values.push_back(Temperature::kelvin(value));
  SweptVariable variable = SweptVariable::temperature(values);
  std::transform(values.begin(), values.end(), variable.values.begin(), &celsius_of);
  return variable;
}

std::string brief(const SweptVariable& v) {
  return "<SweptVariable " + v.label() + ", " + std::to_string(v.values.size()) +
         (v.values.size() == 1 ? " value>" : " values>");
}

void bind_swept_variable(py::module_& m) {
  py::class_<SweptVariable>(m, "SweptVariable",
                            "What a grid sweeps: the temperature, or the weight "
                            "percent of an element.")
      .def(py::init(&swept_element), py::kw_only(), py::arg("element"),
           py::arg("weight_percent"))
      .def_static("_temperature", &swept_temperature, py::arg("kelvin"))
      .def_readonly("name", &SweptVariable::name,
                    "'temperature', or the symbol of an element.")
      .def_readonly("unit", &SweptVariable::unit, "'C' (degrees Celsius) or 'wt%'.")
      .def_property_readonly(
          "values", [](const SweptVariable& v) { return read_only(v.values); },
          "Shape (n,), read-only.")
      .def_property_readonly("label", &SweptVariable::label,
                             "'temperature [C]', 'C in the steel [wt%]'.")
      .def_property_readonly("is_temperature", &SweptVariable::is_temperature,
                             "True: a temperature, not an element.")
      .def("__len__", [](const SweptVariable& v) { return v.values.size(); })
      .def("__repr__", &brief)
      .def(
          "__eq__",
          [](const SweptVariable& a, const SweptVariable& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const SweptVariable& v) {
            return py::make_tuple(v.name, v.unit, v.values);
          },
          [](const py::tuple& t) {
            return SweptVariable{t[0].cast<std::string>(), t[1].cast<std::string>(),
                                 t[2].cast<std::vector<double>>()};
          }));
}

void bind_conditions(Class& grid) {
  grid.def_readonly("steel", &SoakGrid::steel, "Name of the steel; may be empty.")
      .def_readonly("analysis", &SoakGrid::analysis,
                    "Of the steel that the grid was made from.")
      .def_readonly("first", &SoakGrid::first, "The swept variable of the rows.")
      .def_readonly("second", &SoakGrid::second, "The swept variable of the columns.")
      .def_property_readonly("celsius", &celsius,
                             "Soak temperature [C]; None where it is swept.")
      .def_readonly("parameters", &SoakGrid::parameters, "Title and edition.")
      .def_readonly("parameters_hash", &SoakGrid::parameters_hash,
                    "ParameterSet.content_hash of the parameter file.")
      .def_property_readonly(
          "shape",
          [](const SoakGrid& g) { return py::make_tuple(g.rows(), g.columns()); },
          "(rows, columns)");
}

void bind_results(Class& grid) {
  grid.def_readonly("states", &SoakGrid::states,
                    "Row by row; None where the work was stopped before.")
      .def_property_readonly("cancelled", &SoakGrid::cancelled,
                             "True: stopped early, some cells are None.")
      .def_property_readonly("not_done", &SoakGrid::not_done, "Number of such cells.")
      .def_property_readonly("failures", &SoakGrid::failures,
                             "Number of soaks that are not usable.")
      .def_property_readonly("carbide_kinds", &SoakGrid::carbide_kinds,
                             "Kinds of carbide that occur anywhere in the grid.")
      .def("warnings_of", &SoakGrid::warnings_of, py::arg("quantity"),
           "The distinct warnings of the soaks, and those of the quantity itself.")
      .def("array", &array, py::arg("quantity"),
           "Values of a Quantity, shape `shape`; NaN where a soak was not done or is "
           "not usable.")
      .def("__getitem__", &item, "State of a cell, grid[row, column].")
      .def("__getitem__", &row, "States of a row: the list grid[row].")
      .def("__len__", &SoakGrid::rows);
}

}  // namespace

void bind_soak_grid(py::module_& m) {
  bind_swept_variable(m);
  Class grid(m, "SoakGrid", "Soaks over two swept variables.");
  bind_conditions(grid);
  bind_results(grid);
  grid.def(
          "to_frame",
          [](const py::object& self, bool wide) {
            return py::module_::import("gibbsteel.grid_frames")
                .attr("grid_to_frame")(self, py::arg("wide") = wide);
          },
          py::kw_only(), py::arg("wide") = true,
          "Table (pandas), one row per cell, or per cell and phase when not `wide`; "
          "see "
          "gibbsteel.grid_frames.grid_to_frame.")
      .def(
          "to_xarray",
          [](const py::object& self) {
            return py::module_::import("gibbsteel.grid_frames")
                .attr("grid_to_xarray")(self);
          },
          "Dataset (xarray); see gibbsteel.grid_frames.grid_to_xarray.")
      .def("__repr__", [](const SoakGrid& g) { return "<" + g.brief() + ">"; })
      .def("__str__", &SoakGrid::full)
      .def(tagged_pickle(&get_state, &set_state, 2));
  m.def("soak_grid", &run_grid, py::arg("steel"), py::arg("first"), py::arg("second"),
        py::arg("kelvin"), py::arg("options"), py::arg("progress"),
        "Soaks at every pair of values.");
}

}  // namespace gibbsteel::python

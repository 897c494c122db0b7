/// ScreenTable: rows of a screen as arrays.

#include "arrays.hpp"
#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/screen_table.hpp"
#include "pickling.hpp"
#include "screen_table_pickle.hpp"

namespace gibbsteel::python {
namespace {

using Class = py::class_<ScreenTable>;
template <class T>
using Column = std::vector<T> ScreenTable::*;
using Names = std::vector<std::string> ScreenTable::*;

/// A view that Python cannot write to and that keeps the table alive.
template <class Shown, class T>
py::array view(const py::object& self, const std::vector<T>& column,
               std::vector<py::ssize_t> shape) {
  static_assert(sizeof(Shown) == sizeof(T));
  const auto* data = reinterpret_cast<const Shown*>(column.data());
  py::array_t<Shown> array(std::move(shape), data, self);
  array.attr("flags").attr("writeable") = false;
  return array;
}

py::ssize_t rows_of(const ScreenTable& table) {
  return static_cast<py::ssize_t>(table.rows());
}

template <class Shown, class T>
void def_column(Class& c, const char* name, Column<T> column, const char* doc) {
  c.def_property_readonly(
      name,
      [column](const py::object& self) {
        const auto& table = self.cast<const ScreenTable&>();
        return view<Shown>(self, table.*column, {rows_of(table)});
      },
      doc);
}

void def_table(Class& c, const char* name, Column<double> column, Names names,
               const char* doc) {
  c.def_property_readonly(
      name,
      [column, names](const py::object& self) {
        const auto& table = self.cast<const ScreenTable&>();
        return view<double>(
            self, table.*column,
            {rows_of(table), static_cast<py::ssize_t>((table.*names).size())});
      },
      doc);
}

py::array degrees_of(const ScreenTable& table, double (*degrees)(Temperature)) {
  std::vector<double> values;
  for (const double kelvin : table.kelvin)
    values.push_back(degrees(Temperature::kelvin(kelvin)));
  return read_only(values);
}

/// Code -> text in the first row that carries it.
std::map<std::string, std::string> warning_texts(const ScreenTable& table) {
  std::map<std::string, std::string> texts;
  for (const ScreenWarning& warning : table.warning_texts)
    texts[warning.code] = warning.text;
  return texts;
}

std::vector<std::string> family_keys(const ScreenTable& table) {
  std::vector<std::string> keys;
  for (const ScreenFamily& family : table.families) keys.push_back(family.key);
  return keys;
}

std::map<std::string, std::size_t> count(const ScreenTable& table) {
  std::map<std::string, std::size_t> named;
  for (const auto& [status, rows] : table.count())
    named[std::string(to_string(status))] = rows;
  return named;
}

std::vector<std::string> certificate_names() {
  std::vector<std::string> names;
  for (const Certificate c :
       {Certificate::none, Certificate::many_starts, Certificate::proof,
        Certificate::covered, Certificate::followed})
    names.emplace_back(to_string(c));
  return names;
}

void bind_conditions(Class& c) {
  def_column<double>(c, "kelvin", &ScreenTable::kelvin, "Shape (rows,) [K].");
  c.def_property_readonly(
      "celsius", [](const ScreenTable& t) { return degrees_of(t, &celsius_of); },
      "Shape (rows,) [C].");
  c.def_property_readonly(
      "fahrenheit", [](const ScreenTable& t) { return degrees_of(t, &fahrenheit_of); },
      "Shape (rows,) [F].");
  def_table(c, "steel_weight_percent", &ScreenTable::steel_weight_percent,
            &ScreenTable::steel_elements,
            "Shape (rows, steel_elements), the compositions as given [wt%].");
  c.def_readonly("rows_per_composition", &ScreenTable::rows_per_composition,
                 "Row r of the screen is composition r // this; 0: not known.");
  c.def_readonly("steel_elements", &ScreenTable::steel_elements,
                 "Columns of the compositions given.");
}

void bind_columns(Class& c) {
  def_column<std::int8_t>(c, "status", &ScreenTable::status,
                          "Shape (rows,): a number of status_names.");
  def_column<std::int32_t>(c, "certificate", &ScreenTable::certificate,
                           "Shape (rows,): a number of certificate_names.");
  def_column<std::int32_t>(c, "warnings", &ScreenTable::warnings,
                           "Shape (rows,): how many the state of the row carries.");
  def_column<std::uint64_t>(c, "warning_bits", &ScreenTable::warning_bits,
                            "Shape (rows,): which; bit n is warning 300 + n.");
  def_column<double>(c, "carbide_volume_percent", &ScreenTable::carbide_volume_percent,
                     "Shape (rows,), all carbides [vol%].");
  def_column<double>(c, "carbon_activity", &ScreenTable::carbon_activity,
                     "Shape (rows,), relative to graphite.");
  def_column<double>(c, "gibbs_energy", &ScreenTable::gibbs_energy,
                     "Shape (rows,) [J/mol of atoms].");
  def_table(c, "volume_percent", &ScreenTable::volume_percent, &ScreenTable::kinds,
            "Shape (rows, kinds) [vol%]; 0 where absent.");
  def_table(c, "matrix_weight_percent", &ScreenTable::matrix_weight_percent,
            &ScreenTable::elements, "Shape (rows, elements), the matrix [wt%].");
  def_table(c, "quantity", &ScreenTable::quantity, &ScreenTable::quantities,
            "Shape (rows, quantities), as asked for.");
  c.def_property_readonly(
      "usable",
      [](const ScreenTable& t) {
        py::array_t<bool> flags(rows_of(t));
        for (std::size_t i = 0; i < t.rows(); ++i)
          flags.mutable_data()[i] = t.status[i] == ScreenStatus::usable;
        flags.attr("flags").attr("writeable") = false;
        return flags;
      },
      "Shape (rows,), bool: every number of the row may be used.");
}

void bind_warnings(Class& c) {
  c.def("count_warnings", &ScreenTable::count_warnings,
        "Code of a warning -> number of rows that carry it.")
      .def_property_readonly(
          "warning_texts", &warning_texts,
          "Code -> text in the first row that carries it; others may "
          "hold other numbers.")
      .def_property_readonly(
          "families", &family_keys,
          "Families of steels of the usable rows, where a quantity rests on them.")
      .def_property_readonly("table_warnings", &ScreenTable::table_warnings,
                             "What no row tells alone: rows of several families.")
      .def_property_readonly("_first_warnings", &first_warnings)
      .def_property_readonly("_first_of_families", &first_of_families);
}

void bind_about(Class& c) {
  c.def_readonly("first_row", &ScreenTable::first_row,
                 "Number of the first row within the whole screen.")
      .def_readonly("rows_asked", &ScreenTable::rows_asked,
                    "Rows that were to be done.")
      .def_property_readonly("next_row", &ScreenTable::next_row,
                             "First row that is not done: first_row to go on.")
      .def_property_readonly("cancelled", &ScreenTable::cancelled,
                             "True: stopped early, fewer rows than were asked for.")
      .def_readonly("kinds", &ScreenTable::kinds,
                    "Kinds of carbide of the file; graphite and liquid where allowed.")
      .def_readonly("elements", &ScreenTable::elements, "All elements of the file.")
      .def_readonly("quantities", &ScreenTable::quantities,
                    "Labels of the quantities asked for.")
      .def_property_readonly(
          "at_soak_temperature",
          [](const ScreenTable& t) { return t.basis == VolumeBasis::soak; },
          "Volumes at the soak temperature instead of room temperature.")
      .def_readonly("parameters", &ScreenTable::parameters, "Title and edition.")
      .def_readonly("parameters_hash", &ScreenTable::parameters_hash,
                    "ParameterSet.content_hash of the parameter file.")
      .def("count", &count, "Status name -> number of rows, for those that occur.")
      .def("__len__", &ScreenTable::rows)
      .def("__repr__",
           [](const ScreenTable& t) { return "<ScreenTable: " + t.brief() + ">"; })
      .def("__str__", &ScreenTable::full)
      .def(
          "__eq__", [](const ScreenTable& a, const ScreenTable& b) { return a == b; },
          py::is_operator());
  c.attr("status_names") = py::tuple(py::cast(screen_status_names()));
  c.attr("certificate_names") = py::tuple(py::cast(certificate_names()));
}

ScreenTable join(const std::vector<ScreenTable>& tables) {
  ScreenTable all = tables.at(0);
  for (std::size_t i = 1; i < tables.size(); ++i) all.append(tables[i]);
  return all;
}

}  // namespace

void bind_screen_table(py::module_& m) {
  Class table(m, "ScreenTable", "Rows of a screen: numbers side by side.");
  bind_conditions(table);
  bind_columns(table);
  bind_warnings(table);
  bind_about(table);
  table
      .def(
          "to_frame",
          [](const py::object& self, bool absent) {
            return py::module_::import("gibbsteel.screen_frames")
                .attr("screen_to_frame")(self, py::arg("absent") = absent);
          },
          py::kw_only(), py::arg("absent") = false,
          "Table, one row per row (pandas); see gibbsteel.screen_frames.")
      .def_static("_restored", &screen_table_from, py::arg("stored"))
      .def(tagged_pickle(&screen_table_state, &screen_table_from, 3));
  m.def("join_screens", &join, py::arg("tables"), "One table from consecutive ones.");
}

}  // namespace gibbsteel::python

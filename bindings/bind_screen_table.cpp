/// ScreenTable: rows of a screen as arrays.

#include <cstring>

#include "arrays.hpp"
#include "common.hpp"
#include "gibbsteel/screen_table.hpp"
#include "pickling.hpp"

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

std::map<std::string, std::size_t> count(const ScreenTable& table) {
  std::map<std::string, std::size_t> named;
  for (const auto& [status, rows] : table.count())
    named[std::string(to_string(status))] = rows;
  return named;
}

std::vector<std::string> certificate_names() {
  std::vector<std::string> names;
  for (const Certificate c : {Certificate::none, Certificate::many_starts,
                              Certificate::proof, Certificate::covered})
    names.emplace_back(to_string(c));
  return names;
}

void bind_columns(Class& c) {
  def_column<std::int8_t>(c, "status", &ScreenTable::status,
                          "Shape (rows,): a number of status_names.");
  def_column<std::int32_t>(c, "certificate", &ScreenTable::certificate,
                           "Shape (rows,): a number of certificate_names.");
  def_column<std::int32_t>(c, "warnings", &ScreenTable::warnings,
                           "Shape (rows,): how many the state of the row carries.");
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

void bind_about(Class& c) {
  c.def_readonly("first_row", &ScreenTable::first_row,
                 "Number of the first row within the whole screen.")
      .def_readonly("rows_asked", &ScreenTable::rows_asked,
                    "Rows that were to be done.")
      .def_property_readonly("next_row", &ScreenTable::next_row,
                             "First row that is not done: first_row to go on.")
      .def_property_readonly("cancelled", &ScreenTable::cancelled,
                             "True: stopped early, fewer rows than were asked for.")
      .def_readonly("kinds", &ScreenTable::kinds, "All kinds of carbide of the file.")
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

template <class T>
py::bytes bytes_of(const std::vector<T>& column) {
  return {reinterpret_cast<const char*>(column.data()), column.size() * sizeof(T)};
}

template <class T>
void fill(std::vector<T>& column, const py::handle& stored) {
  const auto bytes = stored.cast<std::string_view>();
  if (bytes.size() != column.size() * sizeof(T))
    throw py::value_error("a column of a stored ScreenTable has another length");
  if (!bytes.empty()) std::memcpy(column.data(), bytes.data(), bytes.size());
}

template <class Enum>
void check_enumerators(const std::vector<Enum>& column, Enum last) {
  for (const Enum value : column)
    if (static_cast<int>(value) < 0 || value > last)
      throw py::value_error("no enumerator with this number");
}

/// Columns as bytes: a table may have millions of rows. screen_folder.py restores a
/// table from the same.
py::tuple get_state(const ScreenTable& t) {
  return py::make_tuple(t.first_row, t.rows_asked, t.kinds, t.elements, t.quantities,
                        t.basis == VolumeBasis::soak, t.parameters, t.parameters_hash,
                        t.rows(), bytes_of(t.status), bytes_of(t.certificate),
                        bytes_of(t.warnings), bytes_of(t.carbide_volume_percent),
                        bytes_of(t.carbon_activity), bytes_of(t.gibbs_energy),
                        bytes_of(t.volume_percent), bytes_of(t.matrix_weight_percent),
                        bytes_of(t.quantity));
}

ScreenTable set_state(const py::tuple& s) {
  ScreenTable t;
  t.first_row = s[0].cast<std::size_t>();
  t.rows_asked = s[1].cast<std::size_t>();
  t.kinds = s[2].cast<std::vector<std::string>>();
  t.elements = s[3].cast<std::vector<std::string>>();
  t.quantities = s[4].cast<std::vector<std::string>>();
  t.basis = s[5].cast<bool>() ? VolumeBasis::soak : VolumeBasis::room;
  t.parameters = s[6].cast<std::string>();
  t.parameters_hash = s[7].cast<std::string>();
  const auto rows = s[8].cast<std::size_t>();
  if (s[9].cast<std::string_view>().size() != rows)
    throw py::value_error("the status column has another length");
  t.resize(rows);
  fill(t.status, s[9]);
  check_enumerators(t.status, ScreenStatus::quantity_failed);
  fill(t.certificate, s[10]);
  check_enumerators(t.certificate, Certificate::followed);
  fill(t.warnings, s[11]);
  fill(t.carbide_volume_percent, s[12]);
  fill(t.carbon_activity, s[13]);
  fill(t.gibbs_energy, s[14]);
  fill(t.volume_percent, s[15]);
  fill(t.matrix_weight_percent, s[16]);
  fill(t.quantity, s[17]);
  return t;
}

}  // namespace

void bind_screen_table(py::module_& m) {
  Class table(m, "ScreenTable", "Rows of a screen: numbers side by side.");
  bind_columns(table);
  bind_about(table);
  table
      .def(
          "to_frame",
          [](const py::object& self) {
            return py::module_::import("gibbsteel.screen_frames")
                .attr("screen_to_frame")(self);
          },
          "Table, one row per row (pandas); see gibbsteel.screen_frames.")
      .def_static("_restored", &set_state, py::arg("stored"))
      .def(tagged_pickle(&get_state, &set_state));
  m.def("join_screens", &join, py::arg("tables"), "One table from consecutive ones.");
}

}  // namespace gibbsteel::python

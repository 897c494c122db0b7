#include "screen_table_pickle.hpp"

#include <cstring>

namespace gibbsteel::python {
namespace {

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

/// Such as "gibbsteel.warning.303".
bool is_code(const std::string& code) {
  constexpr std::string_view kStart = "gibbsteel.warning.3";
  return code.size() == kStart.size() + 2 && code.starts_with(kStart) &&
         code.find_first_not_of("0123456789", kStart.size()) == std::string::npos;
}

/// Each has one entry, ordered by key; see ScreenTable::note_family().
void fill_families(const py::handle& stored, ScreenTable& t) {
  for (const auto& [key, row] : stored.cast<std::vector<FirstOfFamily>>()) {
    if (row >= t.rows()) throw py::value_error("no row with this number");
    if (!t.families.empty() && key <= t.families.back().key)
      throw py::value_error("the families are not in order");
    t.families.push_back({key, row});
  }
}

/// What came with formats 2 and 3.
void fill_later(const py::tuple& s, ScreenTable& t) {
  fill(t.kelvin, s[19]);
  fill(t.steel_weight_percent, s[20]);
  fill(t.warning_bits, s[21]);
  t.rows_per_composition = s[23].cast<std::size_t>();
  for (const auto& [code, row, text] : s[22].cast<std::vector<FirstWarning>>()) {
    if (!is_code(code)) throw py::value_error("no code of a warning");
    t.warning_texts.push_back({code, row, text});
  }
  if (s.size() > 24) fill_families(s[24], t);  // since format 3
}

}  // namespace

std::vector<FirstWarning> first_warnings(const ScreenTable& table) {
  std::vector<FirstWarning> all;
  for (const ScreenWarning& w : table.warning_texts)
    all.emplace_back(w.code, w.first_row, w.text);
  return all;
}

std::vector<FirstOfFamily> first_of_families(const ScreenTable& table) {
  std::vector<FirstOfFamily> all;
  for (const ScreenFamily& f : table.families) all.emplace_back(f.key, f.first_row);
  return all;
}

py::tuple screen_table_state(const ScreenTable& t) {
  return py::make_tuple(
      t.first_row, t.rows_asked, t.kinds, t.elements, t.quantities,
      t.basis == VolumeBasis::soak, t.parameters, t.parameters_hash, t.rows(),
      bytes_of(t.status), bytes_of(t.certificate), bytes_of(t.warnings),
      bytes_of(t.carbide_volume_percent), bytes_of(t.carbon_activity),
      bytes_of(t.gibbs_energy), bytes_of(t.volume_percent),
      bytes_of(t.matrix_weight_percent), bytes_of(t.quantity), t.steel_elements,
      bytes_of(t.kelvin), bytes_of(t.steel_weight_percent), bytes_of(t.warning_bits),
      first_warnings(t), t.rows_per_composition, first_of_families(t));
}

ScreenTable screen_table_from(const py::tuple& s) {
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
  const bool has_conditions = s.size() > 18;  // since format 2
  if (has_conditions) t.steel_elements = s[18].cast<std::vector<std::string>>();
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
  if (has_conditions) fill_later(s, t);
  return t;
}

}  // namespace gibbsteel::python

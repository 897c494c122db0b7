#include "gibbsteel/screen_table.hpp"

#include <algorithm>
#include <array>
#include <cstring>

#include "gibbsteel/errors.hpp"
#include "internal/family_borders.hpp"

namespace gibbsteel {
namespace {

constexpr std::array<std::string_view, 12> kNames{"not done",
                                                  "usable",
                                                  "not certified",
                                                  "iteration limit",
                                                  "stalled",
                                                  "infeasible",
                                                  "composition not finite",
                                                  "composition negative",
                                                  "composition sum",
                                                  "nothing modelled",
                                                  "temperature outside",
                                                  "quantity failed"};

template <class T>
bool same_bits(const std::vector<T>& a, const std::vector<T>& b) {
  return a.size() == b.size() &&
         (a.empty() || std::memcmp(a.data(), b.data(), a.size() * sizeof(T)) == 0);
}

template <class T>
void add(std::vector<T>& to, const std::vector<T>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

/// Where the warning is or belongs; the list is ordered by code.
void keep_first(ScreenWarning warning, std::vector<ScreenWarning>& all) {
  const auto place = std::lower_bound(
      all.begin(), all.end(), warning.code,
      [](const ScreenWarning& w, const std::string& code) { return w.code < code; });
  if (place == all.end() || place->code != warning.code)
    all.insert(place, std::move(warning));
  else if (warning.first_row < place->first_row)
    *place = std::move(warning);
}

/// Where the family is or belongs; the list is ordered by key.
void keep_first(ScreenFamily family, std::vector<ScreenFamily>& all) {
  const auto place = std::lower_bound(
      all.begin(), all.end(), family.key,
      [](const ScreenFamily& f, const std::string& key) { return f.key < key; });
  if (place == all.end() || place->key != family.key)
    all.insert(place, std::move(family));
  else
    place->first_row = std::min(place->first_row, family.first_row);
}

/// Number of the bit of a code: 3 for "gibbsteel.warning.303".
/// @pre tests/parameter_file/error_codes_test.cpp holds that every code has one
unsigned bit_of(const std::string& code) {
  const auto digits = code.substr(code.rfind('.') + 1);
  return static_cast<unsigned>(std::stoi(digits) - 300);
}

bool same_columns(const ScreenTable& a, const ScreenTable& b) {
  return a.kinds == b.kinds && a.elements == b.elements &&
         a.quantities == b.quantities && a.steel_elements == b.steel_elements &&
         a.rows_per_composition == b.rows_per_composition && a.basis == b.basis &&
         a.parameters_hash == b.parameters_hash;
}

/// The first to carry a code, or of a family, is in the table that comes first.
void append_warnings(const ScreenTable& next, ScreenTable& table) {
  for (ScreenWarning warning : next.warning_texts) {
    warning.first_row += table.rows();
    keep_first(std::move(warning), table.warning_texts);
  }
  for (ScreenFamily family : next.families) {
    family.first_row += table.rows();
    keep_first(std::move(family), table.families);
  }
}

}  // namespace

std::string_view to_string(ScreenStatus status) noexcept {
  const auto i = static_cast<std::size_t>(status);
  return i < kNames.size() ? kNames[i] : "unknown";
}

std::vector<std::string> screen_status_names() {
  return {kNames.begin(), kNames.end()};
}

void ScreenTable::resize(std::size_t rows) {
  constexpr double kNone = Occurrence::kUnknown;
  status.resize(rows, ScreenStatus::not_done);
  certificate.resize(rows, Certificate::none);
  warnings.resize(rows, 0);
  warning_bits.resize(rows, 0);
  std::erase_if(warning_texts,
                [rows](const ScreenWarning& w) { return w.first_row >= rows; });
  std::erase_if(families,
                [rows](const ScreenFamily& f) { return f.first_row >= rows; });
  for (auto* column :
       {&kelvin, &carbide_volume_percent, &carbon_activity, &gibbs_energy})
    column->resize(rows, kNone);
  steel_weight_percent.resize(rows * steel_elements.size(), kNone);
  volume_percent.resize(rows * kinds.size(), kNone);
  matrix_weight_percent.resize(rows * elements.size(), kNone);
  quantity.resize(rows * quantities.size(), kNone);
}

void ScreenTable::append(const ScreenTable& next) {
  if (!same_columns(*this, next))
    throw InputError({{"gibbsteel.input.326", "tables",
                       "two of them differ in columns, parameters or volume basis",
                       "join tables that were screened with the same settings"}});
  append_warnings(next, *this);
  rows_asked += next.rows_asked;
  add(kelvin, next.kelvin);
  add(steel_weight_percent, next.steel_weight_percent);
  add(status, next.status);
  add(certificate, next.certificate);
  add(warnings, next.warnings);
  add(warning_bits, next.warning_bits);
  add(carbide_volume_percent, next.carbide_volume_percent);
  add(carbon_activity, next.carbon_activity);
  add(gibbs_energy, next.gibbs_energy);
  add(volume_percent, next.volume_percent);
  add(matrix_weight_percent, next.matrix_weight_percent);
  add(quantity, next.quantity);
}

std::map<ScreenStatus, std::size_t> ScreenTable::count() const {
  std::map<ScreenStatus, std::size_t> rows;
  for (const ScreenStatus s : status) ++rows[s];
  return rows;
}

void ScreenTable::note_family(std::size_t at, const std::string& key) {
  keep_first({key, at}, families);
}

std::vector<Warning> ScreenTable::table_warnings() const {
  std::vector<std::string> keys;
  for (const ScreenFamily& family : families) keys.push_back(family.key);
  std::vector<Warning> all;
  internal::add_distinct(internal::several_families_named(keys), all);
  return all;
}

void ScreenTable::note_warnings(std::size_t at, const std::vector<Warning>& carried) {
  warnings[at] = static_cast<std::int32_t>(carried.size());
  for (const Warning& warning : carried) {
    warning_bits[at] |= std::uint64_t{1} << bit_of(warning.code);
    keep_first({warning.code, at, warning.text}, warning_texts);
  }
}

std::map<std::string, std::size_t> ScreenTable::count_warnings() const {
  std::map<std::string, std::size_t> counted;
  for (const ScreenWarning& warning : warning_texts) {
    const std::uint64_t bit = std::uint64_t{1} << bit_of(warning.code);
    counted[warning.code] = static_cast<std::size_t>(
        std::count_if(warning_bits.begin(), warning_bits.end(),
                      [bit](std::uint64_t bits) { return (bits & bit) != 0; }));
  }
  return counted;
}

bool ScreenTable::operator==(const ScreenTable& other) const {
  return first_row == other.first_row && rows_asked == other.rows_asked &&
         same_columns(*this, other) && same_bits(kelvin, other.kelvin) &&
         same_bits(steel_weight_percent, other.steel_weight_percent) &&
         same_bits(status, other.status) && same_bits(certificate, other.certificate) &&
         same_bits(warnings, other.warnings) &&
         same_bits(warning_bits, other.warning_bits) &&
         warning_texts == other.warning_texts && families == other.families &&
         same_bits(carbide_volume_percent, other.carbide_volume_percent) &&
         same_bits(carbon_activity, other.carbon_activity) &&
         same_bits(gibbs_energy, other.gibbs_energy) &&
         same_bits(volume_percent, other.volume_percent) &&
         same_bits(matrix_weight_percent, other.matrix_weight_percent) &&
         same_bits(quantity, other.quantity);
}

}  // namespace gibbsteel

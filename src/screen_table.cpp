#include "gibbsteel/screen_table.hpp"

#include <array>
#include <cstring>

#include "gibbsteel/errors.hpp"

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

bool same_columns(const ScreenTable& a, const ScreenTable& b) {
  return a.kinds == b.kinds && a.elements == b.elements &&
         a.quantities == b.quantities && a.basis == b.basis &&
         a.parameters_hash == b.parameters_hash;
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
  for (auto* column : {&carbide_volume_percent, &carbon_activity, &gibbs_energy})
    column->resize(rows, kNone);
  volume_percent.resize(rows * kinds.size(), kNone);
  matrix_weight_percent.resize(rows * elements.size(), kNone);
  quantity.resize(rows * quantities.size(), kNone);
}

void ScreenTable::append(const ScreenTable& next) {
  if (!same_columns(*this, next))
    throw InputError({{"gibbsteel.input.326", "tables",
                       "two of them differ in columns, parameters or volume basis",
                       "join tables that were screened with the same settings"}});
  rows_asked += next.rows_asked;
  add(status, next.status);
  add(certificate, next.certificate);
  add(warnings, next.warnings);
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

bool ScreenTable::operator==(const ScreenTable& other) const {
  return first_row == other.first_row && rows_asked == other.rows_asked &&
         same_columns(*this, other) && same_bits(status, other.status) &&
         same_bits(certificate, other.certificate) &&
         same_bits(warnings, other.warnings) &&
         same_bits(carbide_volume_percent, other.carbide_volume_percent) &&
         same_bits(carbon_activity, other.carbon_activity) &&
         same_bits(gibbs_energy, other.gibbs_energy) &&
         same_bits(volume_percent, other.volume_percent) &&
         same_bits(matrix_weight_percent, other.matrix_weight_percent) &&
         same_bits(quantity, other.quantity);
}

std::string ScreenTable::brief() const {
  std::string text = std::to_string(rows()) + (rows() == 1 ? " row" : " rows");
  if (first_row > 0) text += " from row " + std::to_string(first_row);
  for (const auto& [which, rows_of_it] : count())
    text += ", " + std::to_string(rows_of_it) + " " + std::string(to_string(which));
  if (cancelled())
    text += ", CANCELLED, " + std::to_string(rows_asked - rows()) + " not done";
  return text;
}

}  // namespace gibbsteel

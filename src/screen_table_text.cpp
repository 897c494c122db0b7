/// How a ScreenTable prints; see screen_table.hpp.

#include <algorithm>
#include <cmath>

#include "gibbsteel/screen_table.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kWidth = 78;

std::string rows_text(std::size_t count) {
  return std::to_string(count) + (count == 1 ? " row" : " rows");
}

/// "303" of "gibbsteel.warning.303"
std::string number_of(const std::string& code) {
  return code.substr(code.rfind('.') + 1);
}

/// Rows whose warnings are not known by code: of a table that an earlier version wrote.
std::size_t without_codes(const ScreenTable& table) {
  std::size_t rows = 0;
  for (std::size_t i = 0; i < table.rows(); ++i)
    rows += table.warnings[i] > 0 && table.warning_bits[i] == 0;
  return rows;
}

std::string counts_text(const ScreenTable& table) {
  std::string text = rows_text(table.rows());
  if (table.first_row > 0) text += " from row " + std::to_string(table.first_row);
  text += ", long-hold limit";
  for (const auto& [which, rows] : table.count())
    text += ", " + std::to_string(rows) + " " + std::string(to_string(which));
  if (table.cancelled())
    text +=
        ", CANCELLED, " + std::to_string(table.rows_asked - table.rows()) + " not done";
  return text;
}

constexpr std::size_t kMostNamed = 5;  ///< elements in one line

/// "Co in 2 rows, Cu in 1 row", the first elements whose weight percent is not finite.
std::string not_finite_text(const ScreenTable& table) {
  std::string text;
  const std::size_t columns = table.steel_elements.size();
  std::size_t named = 0;
  for (std::size_t e = 0; e < columns; ++e) {
    std::size_t rows = 0;
    for (std::size_t row = 0; row < table.rows(); ++row)
      rows += !std::isfinite(table.steel_weight_percent[row * columns + e]);
    if (rows == 0) continue;
    if (++named > kMostNamed) return text + " and others";
    text +=
        (text.empty() ? "" : ", ") + table.steel_elements[e] + " in " + rows_text(rows);
  }
  return text;
}

/// What is missing where compositions are not finite.
std::string missing_text(const ScreenTable& table) {
  const auto first = std::find(table.status.begin(), table.status.end(),
                               ScreenStatus::composition_not_finite);
  if (first == table.status.end() || table.steel_elements.empty()) return "";
  const auto row = static_cast<std::size_t>(first - table.status.begin());
  return internal::wrapped("! composition not finite, first in row " +
                               std::to_string(table.first_row + row) + ": " +
                               not_finite_text(table) +
                               ". Give 0 where an element was not measured.",
                           kWidth, 2);
}

}  // namespace

std::string ScreenTable::brief() const {
  std::string named;
  for (const auto& [code, rows] : count_warnings())
    named += (named.empty() ? ", warnings: " : ", ") + number_of(code) + " in " +
             std::to_string(rows);
  const std::size_t others = without_codes(*this);
  if (others > 0) named += ", warnings in " + rows_text(others);
  for (const Warning& warning : table_warnings())
    named += (named.empty() ? ", warnings: " : ", ") + number_of(warning.code) +
             " of the whole table";
  return counts_text(*this) + named;
}

std::string ScreenTable::full() const {
  std::string text =
      internal::wrapped("screen: " + counts_text(*this), kWidth, 2) +
      internal::wrapped("parameters: " + parameters + ", " + parameters_hash, kWidth,
                        2) +
      (basis == VolumeBasis::room ? "volumes at room temperature\n"
                                  : "volumes at soak temperature\n") +
      missing_text(*this);
  const auto counted = count_warnings();
  for (const ScreenWarning& warning : warning_texts)
    text += internal::wrapped(
        "! [" + warning.code + "] in " + rows_text(counted.at(warning.code)) +
            ", first in row " + std::to_string(first_row + warning.first_row) + ": " +
            warning.text,
        kWidth, 2);
  for (const Warning& warning : table_warnings())
    text += internal::wrapped(
        "! [" + warning.code + "] of the whole table: " + warning.text, kWidth, 2);
  const std::size_t others = without_codes(*this);
  if (others > 0) text += "! " + rows_text(others) + " with warnings of unknown code\n";
  return text + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel

/// How a SoakGrid prints; see soak_grid.hpp.

#include <algorithm>

#include "gibbsteel/soak_grid.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/missing_carbon.hpp"
#include "internal/number_format.hpp"
#include "internal/other_kinds.hpp"
#include "internal/result_text.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kWidth = 78;
constexpr std::size_t kMostRows = 13, kMostColumns = 7;

/// First, last and evenly between; all when there are at most `most`.
std::vector<std::size_t> picked(std::size_t all, std::size_t most) {
  const std::size_t count = std::min(all, most);
  std::vector<std::size_t> indices;
  for (std::size_t i = 0; i < count; ++i)
    indices.push_back(count == 1 ? 0 : i * (all - 1) / (count - 1));
  return indices;
}

std::vector<std::string> value_cells(const SweptVariable& variable,
                                     TemperatureUnit unit) {
  std::vector<std::string> cells;
  std::vector<Temperature> temperatures;
  for (const double value : variable.values) {
    cells.push_back(internal::significant(value, 6));
    temperatures.push_back(Temperature::celsius(value));
  }
  return variable.is_temperature() ? internal::degree_cells(temperatures, unit) : cells;
}

std::string table(const SoakGrid& grid, const Quantity& quantity, int digits) {
  const auto values = grid.array(quantity);
  const auto columns = picked(grid.columns(), kMostColumns);
  std::vector<std::vector<std::string>> rows{{quantity.label()}};
  const auto across = value_cells(grid.second, grid.temperature_unit);
  const auto down = value_cells(grid.first, grid.temperature_unit);
  for (const std::size_t c : columns) rows[0].push_back(across[c]);
  for (const std::size_t r : picked(grid.rows(), kMostRows)) {
    rows.push_back({down[r]});
    for (const std::size_t c : columns)
      rows.back().push_back(
          internal::fixed_or(values[r * grid.columns() + c], digits, "n/a"));
  }
  return internal::text_table(rows);
}

std::string shown_text(const SoakGrid& grid) {
  const std::string text =
      "down: " + grid.first.label() + "; across: " + grid.second.label();
  if (grid.rows() <= kMostRows && grid.columns() <= kMostColumns) return text + "\n";
  return text + "; evenly picked, all in to_frame()\n";
}

}  // namespace

std::string SoakGrid::full() const {
  std::vector<const State*> done;
  for (const auto& state : states)
    if (state) done.push_back(&*state);
  std::string text =
      internal::wrapped(brief(), kWidth, 2) +
      internal::wrapped("analysis, wt%: " + analysis.brief(), kWidth, 2) +
      internal::wrapped("parameters: " + parameters, kWidth, 2);
  if (!done.empty()) text += internal::basis_text(*done.front());
  auto warnings = internal::distinct_warnings(done);
  internal::forget_swept_carbon({first.name, second.name}, warnings);
  text += shown_text(*this) + "\n" +
          table(*this, quantities::carbide_volume_percent(), 2) + "\n";
  for (const std::string& kind : internal::other_kinds(done))
    text += table(*this, quantities::volume_percent(kind), 2) + "\n";
  text += table(*this, quantities::matrix("C"), 3) +
          internal::last_digits_text(!warnings.empty()) + "\n";
  for (const Warning& warning : warnings)
    text += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return text + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel

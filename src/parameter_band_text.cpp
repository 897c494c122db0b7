/// How a ParameterBand prints; see parameter_band.hpp.

#include <algorithm>
#include <cmath>

#include "gibbsteel/parameter_band.hpp"
#include "internal/number_format.hpp"
#include "internal/text_table.hpp"
#include "tolerance/band_text.hpp"

namespace gibbsteel {
namespace {

using Rows = std::vector<std::vector<std::string>>;

constexpr std::size_t kWidth = 78;
constexpr std::size_t kMostRows = 12;

/// The numbers that matter most for the first quantity, largest scatter first.
std::string numbers_table(const ParameterBand& band) {
  std::vector<std::size_t> order;
  const auto& parts = band.quantities.front().contributions;
  for (std::size_t i = 0; i < parts.size(); ++i) order.push_back(i);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return parts[a].scatter > parts[b].scatter;
  });
  if (order.size() > kMostRows) order.resize(kMostRows);
  Rows rows{{"uncertain number", "unit", "value", "std dev", "effect", "share, %"}};
  for (const std::size_t i : order) {
    const TolerancedInput& input = band.inputs[i];
    const bool known = !std::isnan(parts[i].scatter);
    rows.push_back(
        {input.text.empty() ? input.name : input.text, input.unit,
         internal::significant(input.nominal, 6),
         internal::significant(input.standard_deviation, 3),
         known ? internal::significant(parts[i].scatter, 3) : "n/a",
         known ? internal::fixed_or(100.0 * parts[i].share, 0, "n/a") : "n/a"});
  }
  return internal::text_table(rows);
}

std::string notes(const ParameterBand& band) {
  return internal::wrapped(
      "1st order: standard deviation from the derivatives. " +
          std::to_string(band.inputs.size()) +
          " numbers of the parameter file state a standard deviation; all others count "
          "as exact, so the true uncertainty is larger. Effects and shares are those "
          "on "
          "the first quantity of the table; correlated numbers can have negative "
          "shares.",
      kWidth, 0);
}

}  // namespace

std::string ParameterBand::brief() const {
  if (!usable()) return nominal.brief();
  const std::string counts = internal::band_counts(*this);
  return internal::band_heading(*this) + ", parameter band, " +
         internal::band_conditions(*this) + ": " + internal::band_first(*this) +
         (counts.empty() ? "" : ", " + counts);
}

std::string ParameterBand::full() const {
  if (!usable()) return brief() + "\n" + internal::band_end(*this);
  std::string text = internal::band_top(*this, "parameter band") + "\n" +
                     internal::bands_table(*this, false) + "\n" + numbers_table(*this) +
                     "\n";
  if (samples > unusable.size()) text += internal::phases_text(*this);
  return text + notes(*this) + internal::band_last_digits(*this) + "\n" +
         internal::band_end(*this);
}

}  // namespace gibbsteel

#include "tolerance/band_text.hpp"

#include <cmath>

#include "internal/number_format.hpp"
#include "internal/quantity_condition.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel::internal {
namespace {

using Rows = std::vector<std::vector<std::string>>;

constexpr std::size_t kWidth = 78;

std::string percentile_name(double percent) { return shortest(percent) + " %"; }

std::string warnings_text(const std::vector<Warning>& warnings) {
  std::string text;
  for (const Warning& warning : warnings)
    text += wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return text;
}

}  // namespace

std::string band_heading(const Band& band) {
  const State& state = band.nominal;
  return (state.steel.empty() ? "steel" : state.steel) + " at " +
         fixed(state.temperature.in_celsius(), 0) + " C (" +
         fixed(state.temperature.in_fahrenheit(), 0) + " F)";
}

/// Three places below 1, two below 100, one above: bands need one more than results.
std::string band_number(double value, double nominal) {
  const double size = std::abs(std::isnan(nominal) ? value : nominal);
  return fixed_or(value, size < 1.0 ? 4 : (size < 100.0 ? 3 : 1), "n/a");
}

std::string band_counts(const Band& band) {
  if (band.samples_asked == 0) return "";
  std::string text = std::to_string(band.samples) + " samples";
  if (!band.unusable.empty())
    text += ", " + std::to_string(band.unusable.size()) + " NOT USABLE";
  if (band.cancelled)
    text += ", CANCELLED after " + std::to_string(band.samples) + " of " +
            std::to_string(band.samples_asked);
  return text;
}

std::string band_first(const Band& band) {
  const QuantityBand& q = band.quantities.front();
  const auto& percentiles = q.sampled.percentiles;
  std::string text = q.name + " " + band_number(q.nominal, q.nominal);
  if (percentiles.size() > 1 && q.sampled.count > 0)
    text += " (" + band_number(percentiles.front(), q.nominal) + " to " +
            band_number(percentiles.back(), q.nominal) + ")";
  else
    text += " +- " + band_number(q.first_order.standard_deviation, q.nominal);
  return q.unit.empty() ? text : text + " " + q.unit;
}

std::string band_conditions(const Band& band) {
  std::string text = "long-hold limit";
  for (const QuantityBand& q : band.quantities)
    if (const auto one = condition_of(q.name); text.find(one) == std::string::npos)
      text += " and " + one;
  return text;
}

std::string band_top(const Band& band, const std::string& title) {
  const State& state = band.nominal;
  const std::string counts = band_counts(band);
  return band_heading(band) + ", " + title + ", " + band_conditions(band) + "\n" +
         analysis_text(state) +
         wrapped("parameters: " + state.parameters + ", " + state.parameters_hash,
                 kWidth, 2) +
         basis_text(state) + (counts.empty() ? "" : counts + "\n");
}

std::string bands_table(const Band& band, bool corners) {
  Rows rows{{"", "nominal"}};
  if (band.samples > 0) {
    for (const double percent : band.percentiles)
      rows[0].push_back(percentile_name(percent));
    rows[0].push_back("std dev");
  }
  rows[0].push_back("1st order");
  if (corners) rows[0].insert(rows[0].end(), {"worst low", "worst high"});
  for (const QuantityBand& q : band.quantities) {
    std::vector<double> values{q.nominal};
    if (band.samples > 0) {
      values.insert(values.end(), q.sampled.percentiles.begin(),
                    q.sampled.percentiles.end());
      values.push_back(q.sampled.standard_deviation);
    }
    values.push_back(q.first_order.standard_deviation);
    if (corners) {
      values.push_back(q.lowest_corner.value);
      values.push_back(q.highest_corner.value);
    }
    rows.push_back({q.label()});
    for (const double value : values)
      rows.back().push_back(band_number(value, q.nominal));
  }
  return text_table(rows);
}

std::string phases_text(const Band& band) {
  std::string list;
  for (const PhaseShare& phase : band.phases)
    list += (list.empty() ? "" : ", ") + phase.kind + " " +
            fixed_or(100.0 * phase.share, 0, "n/a");
  return wrapped("share of the samples that hold a phase, %: " + list, kWidth, 2);
}

std::string band_last_digits(const Band& band) {
  return last_digits_text(!band.nominal.warnings.empty() || !band.warnings.empty());
}

std::string band_end(const Band& band) {
  return warnings_text(band.nominal.warnings) + warnings_text(band.warnings) +
         wrapped(kCaution, kWidth, 0);
}

}  // namespace gibbsteel::internal

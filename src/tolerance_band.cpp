#include "gibbsteel/tolerance_band.hpp"

#include <cmath>

#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"
#include "tolerance/band_text.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;
using Rows = std::vector<std::vector<std::string>>;

constexpr std::size_t kWidth = 78;

std::string percent_of(double share) {
  return internal::fixed_or(100.0 * share, 0, "n/a");
}

/// Nominal value, low and high end.
std::vector<std::string> cells_of(const TolerancedInput& input, TemperatureUnit unit) {
  std::vector<std::string> cells;
  std::vector<Temperature> temperatures;
  for (const double value : {input.nominal, input.low, input.high}) {
    cells.push_back(fixed(value, input.unit == "wt%" ? 3 : 1));
    temperatures.push_back(Temperature::celsius(value));
  }
  return input.name == "temperature" ? internal::degree_cells(temperatures, unit)
                                     : cells;
}

std::string inputs_table(const ToleranceBand& band) {
  Rows rows{{"scatters", "unit", "nominal", "low", "high", "std dev", "as"}};
  for (const TolerancedInput& i : band.inputs) {
    rows.push_back({i.name, i.unit});
    for (const std::string& cell : cells_of(i, band.temperature_unit))
      rows.back().push_back(cell);
    rows.back().push_back(internal::significant(i.standard_deviation, 3));
    rows.back().push_back(i.given_deviation > 0.0 ? "normal" : "uniform");
  }
  return internal::text_table(rows);
}

std::string shares_table(const ToleranceBand& band) {
  Rows rows{{"share of the variance, %"}};
  for (const TolerancedInput& input : band.inputs) rows[0].push_back(input.name);
  for (const QuantityBand& q : band.quantities) {
    std::vector<std::string> row{q.label()};
    for (const Contribution& c : q.contributions)
      row.push_back(
          percent_of(std::isnan(c.sampled_share) ? c.share : c.sampled_share));
    rows.push_back(row);
  }
  return internal::text_table(rows);
}

std::string carbon_note(SegregatedCarbon carbon) {
  const std::string all = " Segregation: all substitutional elements together, ";
  switch (carbon) {
    case SegregatedCarbon::equal_activity:
      return all + "and carbon at equal activity, as it spreads in a soak.";
    case SegregatedCarbon::scaled:
      return all + "carbon with them: an approximation, it spreads in a soak.";
    case SegregatedCarbon::unchanged:
      break;
  }
  return all + "carbon the same: an approximation, it follows carbide formers.";
}

std::string notes(const ToleranceBand& band) {
  std::string text = "1st order: standard deviation from the derivatives.";
  if (band.corners > 0)
    text += " Worst: " + std::to_string(band.corners) +
            " corners of the box soaked in a search, which is no proof; the box ends "
            "at the limits or at two standard deviations.";
  for (const TolerancedInput& input : band.inputs)
    if (input.name == "segregation") text += carbon_note(band.segregated_carbon);
  return internal::wrapped(text, kWidth, 0);
}

}  // namespace

std::string ToleranceBand::brief() const {
  if (!usable()) return nominal.brief();
  const std::string counts = internal::band_counts(*this);
  return internal::band_heading(*this) + ", tolerance band, " +
         internal::band_conditions(*this) + ": " + internal::band_first(*this) +
         (counts.empty() ? "" : ", " + counts);
}

std::string ToleranceBand::full() const {
  if (!usable()) return brief() + "\n" + internal::band_end(*this);
  std::string text =
      internal::band_top(*this, "tolerance band") + "\n" + inputs_table(*this) + "\n" +
      internal::bands_table(*this, corners > 0) + "\n" + shares_table(*this) + "\n";
  if (samples > unusable.size()) text += internal::phases_text(*this);
  return text + notes(*this) + internal::band_last_digits(*this) + "\n" +
         internal::band_end(*this);
}

}  // namespace gibbsteel

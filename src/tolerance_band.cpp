#include "gibbsteel/tolerance_band.hpp"

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;
using Rows = std::vector<std::vector<std::string>>;

constexpr std::size_t kWidth = 78;

std::string heading(const ToleranceBand& band) {
  const State& state = band.nominal;
  return (state.steel.empty() ? "steel" : state.steel) + " at " +
         fixed(state.temperature.in_celsius(), 0) + " C (" +
         fixed(state.temperature.in_fahrenheit(), 0) + " F)";
}

/// Three places below 1, two below 100, one above: bands need one more than results.
std::string number(double value, double nominal) {
  const double size = std::abs(std::isnan(nominal) ? value : nominal);
  return internal::fixed_or(value, size < 1.0 ? 4 : (size < 100.0 ? 3 : 1), "n/a");
}

std::string percent_of(double share) {
  return internal::fixed_or(100.0 * share, 0, "n/a");
}

std::string inputs_table(const ToleranceBand& band) {
  Rows rows{{"scatters", "unit", "nominal", "low", "high", "std dev", "as"}};
  for (const TolerancedInput& i : band.inputs) {
    const int digits = i.unit == "wt%" ? 3 : 1;
    rows.push_back({i.name, i.unit, fixed(i.nominal, digits), fixed(i.low, digits),
                    fixed(i.high, digits),
                    internal::significant(i.standard_deviation, 3),
                    i.given_deviation > 0.0 ? "normal" : "uniform"});
  }
  return internal::text_table(rows);
}

std::string percentile_name(double percent) {
  return internal::shortest(percent) + " %";
}

std::string bands_table(const ToleranceBand& band) {
  Rows rows{{"", "nominal"}};
  for (const double percent : band.percentiles)
    rows[0].push_back(percentile_name(percent));
  for (const char* name : {"std dev", "1st order", "worst low", "worst high"})
    rows[0].push_back(name);
  for (const QuantityBand& q : band.quantities) {
    const auto text = [&](double value) { return number(value, q.nominal); };
    std::vector<std::string> row{q.label(), text(q.nominal)};
    for (const double value : q.sampled.percentiles) row.push_back(text(value));
    for (const double value :
         {q.sampled.standard_deviation, q.first_order.standard_deviation,
          q.lowest_corner.value, q.highest_corner.value})
      row.push_back(text(value));
    rows.push_back(row);
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

std::string phases_text(const ToleranceBand& band) {
  std::string list;
  for (const PhaseShare& phase : band.phases)
    list += (list.empty() ? "" : ", ") + phase.kind + " " + percent_of(phase.share);
  return internal::wrapped("share of the samples that hold a phase, %: " + list, kWidth,
                           2);
}

std::string counts_text(const ToleranceBand& band) {
  std::string text = std::to_string(band.samples) + " samples";
  if (!band.unusable.empty())
    text += ", " + std::to_string(band.unusable.size()) + " NOT USABLE";
  if (band.cancelled)
    text += ", CANCELLED after " + std::to_string(band.samples) + " of " +
            std::to_string(band.samples_asked);
  return text;
}

std::string notes(const ToleranceBand& band) {
  std::string text =
      "1st order: standard deviation from the derivatives. Worst: " +
      std::to_string(band.corners) +
      " corners of the box soaked in a search, which is no proof; the box ends at the "
      "limits or at two standard deviations.";
  for (const TolerancedInput& input : band.inputs)
    if (input.name == "segregation")
      text += " Segregation: all substitutional elements together; carbon " +
              std::string(to_string(band.segregated_carbon)) +
              (band.segregated_carbon == SegregatedCarbon::equal_activity
                   ? ", as it evens out in a soak."
                   : ", an approximation: in truth its activity evens out in a soak.");
  return internal::wrapped(text, kWidth, 0);
}

std::string warnings_text(const std::vector<Warning>& warnings) {
  std::string text;
  for (const Warning& warning : warnings)
    text += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return text;
}

}  // namespace

std::string QuantityBand::label() const {
  return unit.empty() ? name : name + " [" + unit + "]";
}

const QuantityBand& ToleranceBand::at(std::string_view name) const {
  std::string known;
  for (const QuantityBand& q : quantities) {
    if (q.name == name || q.label() == name) return q;
    known += (known.empty() ? "'" : ", '") + q.name + "'";
  }
  throw InputError({{"gibbsteel.input.209", "quantity",
                     "'" + std::string(name) + "' is not in this band",
                     known.empty() ? "the nominal state is not usable: it holds none"
                                   : "it holds " + known}});
}

std::string ToleranceBand::brief() const {
  if (!usable()) return nominal.brief();
  std::string text = heading(*this) + ", tolerance band: ";
  const QuantityBand& q = quantities.front();
  text += q.name + " " + number(q.nominal, q.nominal);
  if (q.sampled.percentiles.size() > 1 && q.sampled.count > 0)
    text += " (" + number(q.sampled.percentiles.front(), q.nominal) + " to " +
            number(q.sampled.percentiles.back(), q.nominal) + ")";
  if (!q.unit.empty()) text += " " + q.unit;
  return text + ", " + counts_text(*this);
}

std::string ToleranceBand::full() const {
  const std::string end = warnings_text(nominal.warnings) + warnings_text(warnings) +
                          internal::wrapped(internal::kCaution, kWidth, 0);
  if (!usable()) return brief() + "\n" + end;
  std::string text = heading(*this) + ", tolerance band, long-hold limit\n" +
                     internal::analysis_text(nominal) +
                     internal::wrapped("parameters: " + nominal.parameters + ", " +
                                           nominal.parameters_hash,
                                       kWidth, 2) +
                     internal::basis_text(nominal) + counts_text(*this) + "\n\n" +
                     inputs_table(*this) + "\n" + bands_table(*this) + "\n" +
                     shares_table(*this) + "\n";
  if (samples > unusable.size()) text += phases_text(*this);
  return text + notes(*this) + internal::kLastDigits + "\n" + end;
}

}  // namespace gibbsteel

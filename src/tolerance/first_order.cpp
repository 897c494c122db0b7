#include "tolerance/first_order.hpp"

#include <algorithm>
#include <cmath>

#include "tolerance/input_slopes.hpp"

namespace gibbsteel::internal {
namespace {

FirstOrderBand first_order_of(const QuantityBand& quantity,
                              const std::vector<TolerancedInput>& inputs) {
  FirstOrderBand band;
  band.mean = band.lowest = band.highest = quantity.nominal;
  double variance = 0.0;
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    const double slope = quantity.contributions[i].slope;
    const double to_low = slope * (inputs[i].low - inputs[i].nominal);
    const double to_high = slope * (inputs[i].high - inputs[i].nominal);
    band.mean += slope * (inputs[i].mean - inputs[i].nominal);
    band.lowest += std::min(to_low, to_high);
    band.highest += std::max(to_low, to_high);
    variance += std::pow(slope * inputs[i].standard_deviation, 2);
  }
  band.standard_deviation = std::sqrt(variance);
  if (std::isnan(variance)) return {};
  return band;
}

void fill_contributions(const std::vector<TolerancedInput>& inputs,
                        QuantityBand& quantity) {
  double variance = 0.0;
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    Contribution& c = quantity.contributions[i];
    c.scatter = std::abs(c.slope) * inputs[i].standard_deviation;
    variance += c.scatter * c.scatter;
  }
  for (Contribution& c : quantity.contributions)
    c.share = variance == 0.0 ? 0.0 : c.scatter * c.scatter / variance;
}

/// The inputs without a slope, when nothing else explains it.
std::string missing_slopes(const QuantityBand& quantity) {
  std::string list;
  for (const Contribution& c : quantity.contributions)
    if (std::isnan(c.slope)) list += (list.empty() ? "" : ", ") + c.input;
  return list.empty() ? "" : "no derivative with respect to " + list;
}

}  // namespace

void fill_first_order(const Steel& steel, Temperature t,
                      const std::vector<Quantity>& quantities,
                      const SoakOptions& options, ToleranceBand& band) {
  const InputSlopes slopes(steel, t, band.inputs, options, band.segregated_carbon);
  for (std::size_t q = 0; q < quantities.size(); ++q) {
    QuantityBand& quantity = band.quantities[q];
    for (std::size_t i = 0; i < band.inputs.size(); ++i)
      quantity.contributions[i].slope = slopes.of(quantities[q], band.inputs[i]);
    fill_contributions(band.inputs, quantity);
    FirstOrderBand& first = quantity.first_order =
        first_order_of(quantity, band.inputs);
    const std::string missing = missing_slopes(quantity);
    first.one_sided = missing.empty() && slopes.one_sided();
    if (first.one_sided || !missing.empty()) first.remark = slopes.remark();
    if (first.remark.empty()) first.remark = missing;
  }
}

}  // namespace gibbsteel::internal

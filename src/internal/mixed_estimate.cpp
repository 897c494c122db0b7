#include "internal/mixed_estimate.hpp"

#include <algorithm>
#include <cmath>

#include "internal/family_mix.hpp"

namespace gibbsteel::internal {

Estimate mixed_estimate(const std::vector<HardeningEstimates>& ones,
                        Estimate HardeningEstimates::*estimate,
                        const NamedValues& shares) {
  Estimate mixed = ones.front().*estimate;
  if (ones.size() == 1 || !mixed.known()) return mixed;
  const auto mean = [&](const auto& of) {
    double sum = 0.0;
    std::size_t i = 0;
    for (const auto& share : shares) sum += share.second * of(ones[i++].*estimate);
    return sum;
  };
  const double value = mean([](const Estimate& e) { return e.value; });
  const auto apart = [&](double Estimate::*side) {
    return std::sqrt(mean([&](const Estimate& e) {
      return std::pow(e.*side - e.value, 2) + std::pow(e.value - value, 2);
    }));
  };
  mixed.value = value;
  // Of an amount in percent neither side leaves 0 to 100.
  const double least = mixed.unit == "C" ? -273.15 : 0.0;
  mixed.low = std::max(value - apart(&Estimate::low), least);
  mixed.high = value + apart(&Estimate::high);
  if (mixed.unit == "vol%") mixed.high = std::min(mixed.high, 100.0);
  mixed.equation += ", mixed by (H29)";
  mixed.source += "; mixed: " + shares_text(shares);
  return mixed;
}

}  // namespace gibbsteel::internal

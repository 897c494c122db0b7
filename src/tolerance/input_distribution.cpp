#include "tolerance/input_distribution.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace gibbsteel::internal {
namespace {

constexpr double kCut = 6.0;        ///< of a distribution, in standard deviations
constexpr double kBoxCorner = 2.0;  ///< of the box, in standard deviations
constexpr double kLogTwoPi = 1.8378770664093453;

double density(double z) { return std::exp(-0.5 * (z * z + kLogTwoPi)); }

double probability(double z) {
  return boost::math::cdf(boost::math::normal_distribution<double>(), z);
}

/// Where the distribution of a weight percent is cut below, in standard deviations.
double lower_cut(double nominal, double deviation) {
  return std::max(-kCut, -nominal / deviation);
}

}  // namespace

TolerancedInput normal_input(const std::string& name, const std::string& unit,
                             double nominal, double standard_deviation) {
  const double a = lower_cut(nominal, standard_deviation);
  const double inside = probability(kCut) - probability(a);
  // Moments of a cut normal distribution (Johnson, Kotz & Balakrishnan 1994, from
  // memory).
  const double shift = (density(a) - density(kCut)) / inside;
  const double spread =
      1.0 + (a * density(a) - kCut * density(kCut)) / inside - shift * shift;
  TolerancedInput input;
  input.name = name;
  input.unit = unit;
  input.nominal = nominal;
  input.low = std::max(0.0, nominal - kBoxCorner * standard_deviation);
  input.high = nominal + kBoxCorner * standard_deviation;
  input.given_deviation = standard_deviation;
  input.mean = nominal + standard_deviation * shift;
  input.standard_deviation = standard_deviation * std::sqrt(spread);
  return input;
}

TolerancedInput uniform_input(const std::string& name, const std::string& unit,
                              double nominal, double low, double high) {
  TolerancedInput input;
  input.name = name;
  input.unit = unit;
  input.nominal = nominal;
  input.low = low;
  input.high = high;
  input.mean = 0.5 * (low + high);
  input.standard_deviation = (high - low) / std::sqrt(12.0);
  return input;
}

double quantile_of(const TolerancedInput& input, double u) {
  const double deviation = input.given_deviation;
  if (deviation == 0.0) return input.low + u * (input.high - input.low);
  const double below = probability(lower_cut(input.nominal, deviation));
  const double inside = probability(kCut) - below;
  const double z =
      boost::math::quantile(boost::math::normal_distribution<double>(),
                            std::clamp(below + u * inside, 0x1p-60, 1.0 - 0x1p-53));
  return std::max(0.0, input.nominal + deviation * z);
}

std::vector<TolerancedInput> inputs_of(const Steel& steel, Temperature t,
                                       const HeatTolerances& tolerances) {
  const NamedValues& given = steel.analysis().given;
  std::vector<TolerancedInput> inputs;
  for (const auto& [symbol, low, high] : tolerances.ranges)
    if (low < high)
      inputs.push_back(uniform_input(symbol, "wt%", given[symbol], low, high));
  for (const auto& [symbol, deviation] : tolerances.standard_deviations)
    inputs.push_back(normal_input(symbol, "wt%", given[symbol], deviation));
  const double error = tolerances.furnace_error, celsius = t.in_celsius();
  if (error > 0.0)
    inputs.push_back(
        uniform_input("temperature", "C", celsius, celsius - error, celsius + error));
  const double percent = tolerances.segregation_percent;
  if (percent > 0.0)
    inputs.push_back(
        uniform_input("segregation", "% of alloy", 0.0, -percent, percent));
  return inputs;
}

}  // namespace gibbsteel::internal

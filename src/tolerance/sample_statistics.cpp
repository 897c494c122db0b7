#include "tolerance/sample_statistics.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gibbsteel::internal {
namespace {

constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

double sum_of_products(std::span<const double> a, std::span<const double> b) {
  const double mean_a = mean_of(a), mean_b = mean_of(b);
  double sum = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += (a[i] - mean_a) * (b[i] - mean_b);
  return sum;
}

}  // namespace

double mean_of(std::span<const double> values) {
  if (values.empty()) return kUnknown;
  // Around the first value: equal values then have exactly that mean.
  double sum = 0.0;
  for (const double value : values) sum += value - values[0];
  return values[0] + sum / static_cast<double>(values.size());
}

double deviation_of(std::span<const double> values) {
  if (values.size() < 2) return kUnknown;
  return std::sqrt(sum_of_products(values, values) /
                   static_cast<double>(values.size() - 1));
}

double percentile_of(std::span<const double> sorted, double percent) {
  if (sorted.empty()) return kUnknown;
  const double rank = percent / 100.0 * static_cast<double>(sorted.size() - 1);
  const auto below = static_cast<std::size_t>(rank);
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  const double part = rank - static_cast<double>(below);
  return sorted[below] + part * (sorted[above] - sorted[below]);
}

double squared_correlation(std::span<const double> a, std::span<const double> b) {
  if (a.size() < 2) return kUnknown;
  const double variances = sum_of_products(a, a) * sum_of_products(b, b);
  if (!(variances > 0.0)) return 0.0;
  const double both = sum_of_products(a, b);
  return std::min(1.0, both * both / variances);
}

}  // namespace gibbsteel::internal

#pragma once
/// Numbers that describe a list of values. NaN for an empty list.

#include <span>
#include <vector>

namespace gibbsteel::internal {

double mean_of(std::span<const double> values);
/// Root of the mean squared distance from the mean, divided by n - 1; NaN below two.
double deviation_of(std::span<const double> values);
/// Eq. (U3). @param sorted  ascending
double percentile_of(std::span<const double> sorted, double percent);
/// Squared correlation, 0 to 1; 0 when one of the two does not vary.
double squared_correlation(std::span<const double> a, std::span<const double> b);

}  // namespace gibbsteel::internal

#pragma once
/// Differences of soaks as an oracle for slopes of states: central differences of three
/// steps, extrapolated to step 0, which also tell where they are not to be trusted.

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "state_numbers.hpp"

namespace gibbsteel::testing {

struct Difference {
  std::string name;
  double slope = 0.0;   ///< from the steps h/2 and h; error of order h^4
  double coarse = 0.0;  ///< the same from the steps h and 2h
  double size = 0.0;    ///< of the number, over h

  /// What rounding of the number alone makes of the slope.
  double rounding() const { return 1e-15 * size; }
  /// A soak is exact to 1e-12 or so of a number: the slope stands out from that.
  bool resolved() const { return std::abs(slope) >= 1e-5 * size || size == 0.0; }
  /// The two agree to 1e-7 of the slope; where it is not resolved, to what a soak may
  /// leave over. They do not where a piece of a curve ends within the steps, which may
  /// meet the next within 1 J/mol only, or where a soak finds another local minimum.
  bool converged() const {
    const double noise = resolved() ? rounding() : 3e-10 * size;
    return std::abs(slope - coarse) <= 1e-7 * std::abs(slope) + noise;
  }
};

/// Central differences of every number; empty when a state is not usable or holds
/// other phases (or the same in another order) than the others.
/// @param soak  State(double) at a step of the input
template <class Soak>
std::optional<std::vector<Difference>> differences(const Soak& soak, double h) {
  std::vector<Numbers> at;
  for (const double step : {-2.0 * h, -h, -0.5 * h, 0.5 * h, h, 2.0 * h}) {
    const State state = soak(step);
    if (!state.usable()) return std::nullopt;
    at.push_back(numbers_of(state));
    if (at.back().size() != at.front().size()) return std::nullopt;
  }
  std::vector<Difference> out;
  for (std::size_t i = 0; i < at[0].size(); ++i) {
    for (const Numbers& numbers : at)
      if (numbers[i].first != at[0][i].first) return std::nullopt;
    const auto central = [&](std::size_t low, std::size_t high, double step) {
      return (at[high][i].second - at[low][i].second) / (2.0 * step);
    };
    const double wide = central(0, 5, 2.0 * h), middle = central(1, 4, h);
    const double narrow = central(2, 3, 0.5 * h);
    out.push_back({at[0][i].first, narrow + (narrow - middle) / 3.0,
                   middle + (middle - wide) / 3.0, std::abs(at[0][i].second) / h});
  }
  return out;
}

/// How a slope compares with its differences.
struct Comparison {
  long compared = 0;       ///< numbers of which the difference is worth it
  long not_resolved = 0;   ///< numbers that hardly change in the steps
  long not_converged = 0;  ///< numbers of which the difference depends on the step
  double worst = 0.0;      ///< largest relative miss of a compared number
  std::string worst_name;
  /// Of the others, in units of what a soak leaves over (1e-11 of the number per step)
  /// beside 1e-6 of the slope.
  double worst_unresolved = 0.0;
  std::string worst_unresolved_name;

  void add(const std::string& name, double exact, const Difference& difference) {
    const double miss = std::abs(exact - difference.slope);
    if (exact == 0.0 && difference.slope == 0.0) {
      ++compared;
      return;
    }
    if (!difference.converged()) {
      ++not_converged;
      return;
    }
    if (!difference.resolved()) {
      ++not_resolved;
      const double excess = (miss - 1e-6 * std::abs(exact)) / (1e-11 * difference.size);
      if (excess <= worst_unresolved) return;
      worst_unresolved = excess;
      worst_unresolved_name = name;
      return;
    }
    ++compared;
    if (miss <= difference.rounding()) return;  // such as both zero
    double relative = miss / std::abs(difference.slope);
    if (!std::isfinite(relative)) relative = HUGE_VAL;
    if (relative <= worst) return;
    worst = relative;
    worst_name = name;
  }
};

/// Names must agree; @return false when they do not.
inline bool compare(const StateSlope& slope, const std::vector<Difference>& expected,
                    Comparison& comparison) {
  const Numbers exact = numbers_of(slope);
  if (exact.size() != expected.size()) return false;
  for (std::size_t i = 0; i < exact.size(); ++i) {
    if (exact[i].first != expected[i].name) return false;
    comparison.add(slope.input.name + ": " + exact[i].first, exact[i].second,
                   expected[i]);
  }
  return true;
}

}  // namespace gibbsteel::testing

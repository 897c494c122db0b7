#include "scan/condition_line.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gibbsteel::internal {
namespace {

constexpr double kLeastFraction = 1e-12;

}  // namespace

ConditionLine::ConditionLine(const PhaseSystem& system, const SolveOptions& options,
                             LineEnd from, LineEnd to)
    : system_(&system), options_(options), from_(std::move(from)), to_(std::move(to)) {}

Temperature ConditionLine::temperature(double s) const {
  return Temperature::kelvin(
      std::lerp(from_.temperature.in_kelvin(), to_.temperature.in_kelvin(), s));
}

std::vector<double> ConditionLine::mole_fractions(double s) const {
  std::vector<double> x(from_.moles.size());
  for (std::size_t e = 0; e < x.size(); ++e)
    x[e] = std::lerp(from_.moles[e], to_.moles[e], s);
  const double sum = std::accumulate(x.begin(), x.end(), 0.0);
  for (double& fraction : x) fraction = std::max(fraction / sum, kLeastFraction);
  return x;
}

double ConditionLine::kelvin_slope() const noexcept {
  return to_.temperature.in_kelvin() - from_.temperature.in_kelvin();
}

std::vector<double> ConditionLine::mole_fraction_slopes(double s) const {
  const std::size_t count = from_.moles.size();
  double sum = 0.0, growth = 0.0;
  for (std::size_t e = 0; e < count; ++e) {
    sum += std::lerp(from_.moles[e], to_.moles[e], s);
    growth += to_.moles[e] - from_.moles[e];
  }
  std::vector<double> slopes(count);
  for (std::size_t e = 0; e < count; ++e) {
    const double fraction = std::lerp(from_.moles[e], to_.moles[e], s) / sum;
    slopes[e] = (to_.moles[e] - from_.moles[e] - fraction * growth) / sum;
  }
  return slopes;
}

Equilibrium ConditionLine::solve(double s) const {
  return minimize(*system_, temperature(s), mole_fractions(s), options_);
}

}  // namespace gibbsteel::internal

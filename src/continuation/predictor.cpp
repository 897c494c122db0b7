#include "continuation/predictor.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "minimizer/phase_minimum.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kKelvin = 25.0, kLog = 0.5;  ///< what counts as far along a line
constexpr double kFarthest = 2.0;             ///< r, times the step before
constexpr double kStraight = 0.98;            ///< cosine between the two steps
constexpr double kLargestLog = 0.5;           ///< change of ln y or of ln n

/// y1 (y1 / y0)^r, sums of the sublattices kept.
void extrapolate(const CompiledPhase& phase, std::span<const double> y0, double r,
                 std::vector<double>& y1) {
  std::array<double, kMaxConstituents> change, moved;
  for (std::size_t i = 0; i < y1.size(); ++i) {
    const double log = r * std::log(y1[i] / y0[i]);
    change[i] = std::isfinite(log)
                    ? y1[i] * std::expm1(std::clamp(log, -kLargestLog, kLargestLog))
                    : 0.0;
  }
  update_fractions(phase, y1.data(), change.data(), 1.0, moved.data());
  std::copy_n(moved.begin(), y1.size(), y1.begin());
}

}  // namespace

bool Predictor::same_phases(const std::vector<PhaseSet>& sets) const noexcept {
  return std::equal(sets.begin(), sets.end(), before_.sets.begin(), before_.sets.end(),
                    [](const PhaseSet& a, const PhaseSet& b) {
                      return a.phase == b.phase &&
                             distance(a.y, b.y) < kClusterDistance;
                    });
}

/// r of Eq. (C2); 0 where the line turns, starts or takes a much longer step.
double Predictor::ratio(const Conditions& conditions, double kelvin,
                        std::span<const double> overall) const noexcept {
  double forward = 0.0, old = 0.0, fresh = 0.0;
  const auto add = [&](double from, double here, double to) {
    forward += (to - here) * (here - from);
    old += (here - from) * (here - from);
    fresh += (to - here) * (to - here);
  };
  add(before_.kelvin / kKelvin, conditions.kelvin / kKelvin, kelvin / kKelvin);
  for (std::size_t e = 0; e < overall.size(); ++e) {
    const double here = conditions.overall[e];
    add(std::log(before_.overall[e] / here) / kLog, 0.0,
        std::log(overall[e] / here) / kLog);
  }
  const bool straight = forward > kStraight * std::sqrt(old * fresh);
  const double r = forward / old;
  return straight && r < kFarthest ? r : 0.0;
}

/// Eq. (C2)
void Predictor::predict(const Conditions& conditions, double kelvin,
                        std::span<const double> overall, std::vector<PhaseSet>& sets,
                        std::vector<double>& mu) {
  last_.kelvin = conditions.kelvin;
  last_.overall = conditions.overall;
  last_.sets = sets;
  last_.mu = mu;
  const double r =
      known_ && same_phases(sets) ? ratio(conditions, kelvin, overall) : 0.0;
  for (std::size_t f = 0; r > 0.0 && f < sets.size(); ++f) {
    const PhaseSet& old = before_.sets[f];
    const double n = sets[f].amount;
    sets[f].amount = std::clamp(n + r * (n - old.amount), n * std::exp(-kLargestLog),
                                n * std::exp(kLargestLog));
    extrapolate(*conditions.phases[sets[f].phase].phase, old.y, r, sets[f].y);
  }
  for (std::size_t e = 0; r > 0.0 && e < mu.size(); ++e)
    mu[e] += r * (mu[e] - before_.mu[e]);
  std::swap(before_, last_);
  known_ = true;
}

}  // namespace gibbsteel::internal

#include "minimizer/phase_minimum.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gibbsteel::internal {
namespace {

using Row = std::array<double, kMaxConstituents>;
using Square = std::array<double, kMaxConstituents * kMaxConstituents>;

constexpr double kSmallestFraction = 1e-100;
constexpr double kDilute = 0.01;
constexpr double kLargestMove = 0.35;  ///< of a site fraction in one step
constexpr int kHalvings = 14;

double dot(const double* a, const double* b, std::size_t n) noexcept {
  double sum = 0.0;
  for (std::size_t i = 0; i < n; ++i) sum += a[i] * b[i];
  return sum;
}

/// Factor of y for a relative Newton step r. A dilute constituent obeys Henry's law, so
/// that r is the change of ln y however large it is.
double growth(double y, double r) noexcept {
  if (std::abs(r) <= 0.5) return 1.0 + r;
  if (y < kDilute)
    return r < 0.0 ? std::exp(r)
                   : std::min(std::exp(r), std::max(1.0 + r, kDilute / y));
  return r > 0.0 ? 1.0 + r : 0.5 * std::exp(2.0 * r + 1.0);
}

/// Shortens a step so that no site fraction moves by more than kLargestMove.
double step_bound(const double* dy, std::size_t n) noexcept {
  double largest = 0.0;
  for (std::size_t i = 0; i < n; ++i) largest = std::max(largest, std::abs(dy[i]));
  return largest > kLargestMove ? kLargestMove / largest : 1.0;
}

}  // namespace

void update_fractions(const CompiledPhase& phase, const double* y, const double* dy,
                      double fraction, double* out) noexcept {
  for (std::size_t s = 0; s + 1 < phase.first.size(); ++s) {
    double sum = 0.0;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) {
      out[i] = std::max(y[i] * growth(y[i], fraction * dy[i] / y[i]), kSmallestFraction);
      sum += out[i];
    }
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) out[i] /= sum;
  }
}

DescentResult descend(Conditions& conditions, const Candidate& candidate,
                      std::span<const double> mu, const DescentLimits& limits,
                      TangentStep& step, double* y) {
  const CompiledPhase& phase = *candidate.phase;
  const std::size_t n = phase.size();
  Row w, gradient, dy, trial;
  Square hessian;
  plane_weights(phase, mu, w.data());
  DescentResult result;
  for (int k = 0; k < limits.steps; ++k) {
    ++conditions.evaluations;
    result.energy = gibbs_energy(phase, candidate.at, y, gradient.data(), hessian.data());
    result.d = result.energy - dot(w.data(), y, n);
    for (std::size_t i = 0; i < n; ++i) gradient[i] -= w[i];
    step.factor(phase, conditions.rt, y, hessian.data());
    step.newton_direction(gradient.data(), dy.data());
    const double decrease = -dot(gradient.data(), dy.data(), n);
    if (decrease < limits.tolerance) {
      result.converged = true;
      break;
    }
    if (limits.stop_when_positive && result.d > 0.0 && decrease < 0.1 * result.d) break;
    double fraction = step_bound(dy.data(), n);
    const double noise = 1e-13 * std::abs(result.energy);
    bool moved = false;
    for (int h = 0; h < kHalvings && !moved; ++h, fraction *= 0.4) {
      update_fractions(phase, y, dy.data(), fraction, trial.data());
      const double d = gibbs_energy(phase, candidate.at, trial.data()) -
                       dot(w.data(), trial.data(), n);
      moved = d < result.d - 1e-4 * fraction * decrease + noise;
    }
    if (!moved) {
      result.converged = decrease < 1e3 * limits.tolerance;
      break;
    }
    std::copy_n(trial.begin(), n, y);
  }
  result.energy = gibbs_energy(phase, candidate.at, y);
  result.d = result.energy - dot(w.data(), y, n);
  result.atoms = atoms(phase, y);
  return result;
}

}  // namespace gibbsteel::internal

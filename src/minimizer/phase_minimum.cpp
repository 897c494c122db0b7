#include "minimizer/phase_minimum.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "minimizer/small_matrix.hpp"

namespace gibbsteel::internal {
namespace {

using Row = std::array<double, kMaxConstituents>;
using Square = std::array<double, kMaxConstituents * kMaxConstituents>;

constexpr double kSmallestFraction = 1e-100;
constexpr double kDilute = 0.01;
constexpr double kLargestMove = 0.35;  ///< of a site fraction in one step
constexpr int kHalvings = 14;

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

/// One descent: where it stands and the arrays it works on.
class Descent {
 public:
  Descent(Conditions& conditions, const Candidate& candidate,
          std::span<const double> mu, TangentStep& step, double* y)
      : conditions_(conditions),
        candidate_(candidate),
        phase_(*candidate.phase),
        step_(step),
        y_(y),
        n_(candidate.size()) {
    plane_weights(phase_, mu, w_.data());
  }

  /// Energy, Newton direction and predicted decrease at y.
  void evaluate() {
    ++conditions_.evaluations;
    energy_ =
        gibbs_energy(phase_, candidate_.at, y_, gradient_.data(), hessian_.data());
    d_ = energy_ - dot(w_.data(), y_, n_);
    for (std::size_t i = 0; i < n_; ++i) gradient_[i] -= w_[i];
    shift_ = step_.factor(phase_, conditions_.rt, y_, hessian_.data());
    step_.newton_direction(gradient_.data(), direction_.data());
    decrease_ = -dot(gradient_.data(), direction_.data(), n_);
  }

  /// Moves y downhill. @return false when no step along the direction does
  bool move() {
    double fraction = step_bound(direction_.data(), n_);
    const double noise = 1e-13 * std::abs(energy_);
    for (int h = 0; h < kHalvings; ++h, fraction *= 0.4) {
      update_fractions(phase_, y_, direction_.data(), fraction, trial_.data());
      const double d = gibbs_energy(phase_, candidate_.at, trial_.data()) -
                       dot(w_.data(), trial_.data(), n_);
      if (!(d < d_ - 1e-4 * fraction * decrease_ + noise)) continue;  // NaN too
      std::copy_n(trial_.begin(), n_, y_);
      return true;
    }
    return false;
  }

  /// See DescentLimits::enough.
  bool stays_above(double enough) const noexcept {
    return shift_ == 0.0 && decrease_ < 0.46 * conditions_.rt &&
           d_ - decrease_ > enough;
  }
  double d() const noexcept { return d_; }
  double decrease() const noexcept { return decrease_; }

  DescentResult result(bool converged) const {
    DescentResult result;
    result.energy = gibbs_energy(phase_, candidate_.at, y_);
    result.d = result.energy - dot(w_.data(), y_, n_);
    result.atoms = atoms(phase_, y_);
    result.converged = converged;
    return result;
  }

 private:
  Conditions& conditions_;
  const Candidate& candidate_;
  const CompiledPhase& phase_;
  TangentStep& step_;
  double* y_;
  std::size_t n_;
  double energy_ = 0.0, d_ = 0.0, decrease_ = 0.0, shift_ = 0.0;
  Row w_, gradient_, direction_, trial_;
  Square hessian_;
};

}  // namespace

void update_fractions(const CompiledPhase& phase, const double* y, const double* dy,
                      double fraction, double* out) noexcept {
  for (std::size_t s = 0; s + 1 < phase.first.size(); ++s) {
    double sum = 0.0;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) {
      out[i] =
          std::max(y[i] * growth(y[i], fraction * dy[i] / y[i]), kSmallestFraction);
      sum += out[i];
    }
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) out[i] /= sum;
  }
}

DescentResult descend(Conditions& conditions, const Candidate& candidate,
                      std::span<const double> mu, const DescentLimits& limits,
                      TangentStep& step, double* y) {
  Descent descent(conditions, candidate, mu, step, y);
  for (int k = 0; k < limits.steps; ++k) {
    descent.evaluate();
    const double decrease = descent.decrease();
    if (decrease < limits.tolerance) return descent.result(true);
    const bool positive = descent.d() > 0.0 && decrease < 0.1 * descent.d();
    if (limits.stop_when_positive && positive) break;
    if (descent.stays_above(limits.enough)) {
      DescentResult result = descent.result(false);
      result.stopped_above = true;
      return result;
    }
    if (!descent.move()) return descent.result(decrease < 1e3 * limits.tolerance);
  }
  return descent.result(false);
}

}  // namespace gibbsteel::internal

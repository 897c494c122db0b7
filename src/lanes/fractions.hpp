#pragma once
/// A step in site fractions that keeps them positive and their sums, in any number
/// type.

#include "internal/compiled_phase.hpp"
#include "lanes/exponentials.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

/// Factor of y for a relative Newton step r. A dilute constituent obeys Henry's law, so
/// that r is the change of ln y however large it is.
template <class Real>
Real growth(const Real& y, const Real& r) noexcept {
  constexpr double kDilute = 0.01;
  const Real linear = 1.0 + r;
  const auto dilute = y < kDilute;
  const auto large = !(magnitude(r) <= 0.5);
  const auto curved = large & (dilute | (r < 0.0));
  if (!any(curved)) return linear;
  const Real exponent = dilute ? r : 2.0 * r + 1.0;
  const Real power = exponential(exponent);
  const Real most = larger(linear, Real(kDilute / y));
  const Real of_dilute = r < 0.0 ? power : smaller(power, most);
  const Real of_rich = 0.5 * power;
  const Real beyond = dilute ? of_dilute : of_rich;
  return curved ? beyond : linear;
}

/// Multiplicative update that keeps y > 0 and the sums of the sublattices: y (1 + r)
/// for small r = dy/y, exponential for a large r of a dilute constituent and where
/// r < -1/2, then renormalized.                                               Eq. (N2)
template <class Real>
void update_fractions(const CompiledPhase& phase, const Real* y, const Real* dy,
                      const Real& fraction, Real* out) noexcept {
  const Real least = Real{} + 1e-100;
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    const std::size_t begin = phase.first[s], end = phase.first[s + 1];
    Real sum{};
    for (std::size_t i = begin; i < end; ++i) {
      const Real r = fraction * dy[i] / y[i];
      out[i] = larger(Real(y[i] * growth(y[i], r)), least);
      sum += out[i];
    }
    for (std::size_t i = begin; i < end; ++i) out[i] /= sum;
  }
}

/// Shortens a step so that no site fraction moves by more than kLargestMove.
template <class Real>
Real step_bound(const Real* dy, std::size_t n) noexcept {
  constexpr double kLargestMove = 0.35;
  Real largest{};
  for (std::size_t i = 0; i < n; ++i) largest = larger(largest, magnitude(dy[i]));
  return largest > kLargestMove ? kLargestMove / largest : Real{} + 1.0;
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE

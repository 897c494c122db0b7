#include "scan/cubic_bounds.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {
namespace {

/// Bernstein coefficients two and three, and what the cubic may miss, doubled.
struct Cubic {
  double second, third, cubic;

  Cubic(const EndValues& ends, double h)
      : second(ends.v0 + h * ends.dv0 / 3.0),
        third(ends.v1 - h * ends.dv1 / 3.0),
        cubic(std::abs(2.0 * (ends.v0 - ends.v1) + h * (ends.dv0 + ends.dv1))) {}
};

}  // namespace

bool is_monotonic(const EndValues& ends, double h) noexcept {
  const Cubic at(ends, h);
  if (!std::isfinite(at.cubic)) return false;
  const double middle = 3.0 * (at.third - at.second);
  const auto [least, most] = std::minmax({h * ends.dv0, middle, h * ends.dv1});
  return least > at.cubic || most < -at.cubic;
}

bool stays_positive(const EndValues& ends, double h, double floor) noexcept {
  const Cubic at(ends, h);
  if (!std::isfinite(at.cubic)) return false;
  const double least = std::min({ends.v0, at.second, at.third, ends.v1});
  return least > std::max(floor, 0.5 * at.cubic) || is_monotonic(ends, h);
}

}  // namespace gibbsteel::internal

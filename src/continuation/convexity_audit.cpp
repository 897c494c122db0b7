#include "continuation/convexity_audit.hpp"

#include <algorithm>
#include <numeric>

namespace gibbsteel::internal {

double ConvexityAudit::Point::plane_at(std::span<const double> at) const noexcept {
  return std::inner_product(mu.begin(), mu.end(), at.begin(), 0.0);
}

/// Eq. (C3), from both sides.
bool ConvexityAudit::is_convex(const Point& a, const Point& b,
                               double tolerance) noexcept {
  if (a.kelvin != b.kelvin) return true;
  return a.energy >= b.plane_at(a.x) - tolerance &&
         b.energy >= a.plane_at(b.x) - tolerance;
}

/// Eq. (C4)
bool ConvexityAudit::is_concave(const Point& a, const Point& b, const Point& c,
                                double tolerance) noexcept {
  const bool between = (b.kelvin - a.kelvin) * (c.kelvin - b.kelvin) > 0.0;
  if (!between || a.x != b.x || b.x != c.x) return true;
  const double share = (b.kelvin - a.kelvin) / (c.kelvin - a.kelvin);
  return b.energy >= a.energy + share * (c.energy - a.energy) - tolerance;
}

bool ConvexityAudit::add(const Equilibrium& result, std::span<const double> x,
                         double tolerance) {
  if (!result.report.usable()) {
    known_ = 0;
    return true;
  }
  std::rotate(points_.begin(), points_.end() - 1, points_.end());
  Point& last = points_.front();
  last.kelvin = result.temperature.in_kelvin();
  last.energy = result.gibbs_energy;
  last.mu = result.chemical_potential;
  last.x.assign(x.begin(), x.end());
  const double sum = std::accumulate(x.begin(), x.end(), 0.0);
  for (double& share : last.x) share /= sum;
  known_ = std::min(known_ + 1, 3);
  if (known_ > 1 && !is_convex(points_[1], last, tolerance)) return false;
  return known_ < 3 || is_concave(points_[2], points_[1], last, tolerance);
}

}  // namespace gibbsteel::internal

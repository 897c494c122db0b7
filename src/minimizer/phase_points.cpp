#include "minimizer/phase_points.hpp"

#include <algorithm>

namespace gibbsteel::internal {

void sort_by_atoms(const Conditions& conditions, std::vector<PhasePoint>& present) {
  const auto held = [&](const PhasePoint& point) {
    return point.amount * atoms(*conditions.phases[point.phase].phase, point.y.data());
  };
  std::stable_sort(
      present.begin(), present.end(),
      [&](const PhasePoint& a, const PhasePoint& b) { return held(a) > held(b); });
}

}  // namespace gibbsteel::internal

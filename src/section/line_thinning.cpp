#include "section/line_thinning.hpp"

namespace gibbsteel::internal {

std::vector<PlanePoint> thinned(const std::vector<PlanePoint>& points,
                                double tolerance) {
  std::size_t farthest = 0;
  double most = 0.0;
  for (std::size_t i = 1; i + 1 < points.size(); ++i) {
    const double d = distance_to(points[i], points.front(), points.back());
    if (d > most) {
      most = d;
      farthest = i;
    }
  }
  if (most <= tolerance) return {points.front(), points.back()};
  const auto split = points.begin() + static_cast<std::ptrdiff_t>(farthest);
  auto kept = thinned({points.begin(), split + 1}, tolerance);
  const auto rest = thinned({split, points.end()}, tolerance);
  kept.insert(kept.end(), rest.begin() + 1, rest.end());
  return kept;
}

}  // namespace gibbsteel::internal

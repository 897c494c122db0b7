#pragma once
/// Lines with no more points than they need.

#include <vector>

#include "section/plane_point.hpp"

namespace gibbsteel::internal {

/// Fewer points on a line, none of the others farther away from it than `tolerance`.
/// (Douglas & Peucker, Cartographica 10 (1973) 112, from memory.)
std::vector<PlanePoint> thinned(const std::vector<PlanePoint>& points,
                                double tolerance);

}  // namespace gibbsteel::internal

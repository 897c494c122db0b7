#pragma once
/// Points of the plane of a section map. Lengths are counted in tolerances: one unit is
/// what a boundary may be off, in the direction of either axis.

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {

struct PlanePoint {
  double x = 0.0, y = 0.0;
  bool operator==(const PlanePoint&) const = default;
};

inline PlanePoint operator+(PlanePoint a, PlanePoint b) {
  return {a.x + b.x, a.y + b.y};
}
inline PlanePoint operator-(PlanePoint a, PlanePoint b) {
  return {a.x - b.x, a.y - b.y};
}
inline PlanePoint operator*(double f, PlanePoint a) { return {f * a.x, f * a.y}; }
/// Twice the area of the triangle with the origin; positive: `b` is left of `a`.
inline double cross(PlanePoint a, PlanePoint b) { return a.x * b.y - a.y * b.x; }
inline double dot(PlanePoint a, PlanePoint b) { return a.x * b.x + a.y * b.y; }
inline double length(PlanePoint a) { return std::hypot(a.x, a.y); }
inline PlanePoint between(PlanePoint a, PlanePoint b, double s) {
  return {std::lerp(a.x, b.x, s), std::lerp(a.y, b.y, s)};
}

/// From a point to the stretch from a to b.
inline double distance_to(PlanePoint at, PlanePoint a, PlanePoint b) {
  const PlanePoint along = b - a;
  const double square = dot(along, along);
  const double s =
      square > 0.0 ? std::clamp(dot(at - a, along) / square, 0.0, 1.0) : 0.0;
  return length(at - between(a, b, s));
}

}  // namespace gibbsteel::internal

#pragma once
/// Points of the plane of a section map. Lengths are counted in tolerances: one unit is
/// what a boundary may be off, in the direction of either axis.

#include <cmath>

namespace gibbsteel::internal {

struct PlanePoint {
  double x = 0.0, y = 0.0;
  bool operator==(const PlanePoint&) const = default;
};

inline PlanePoint operator+(PlanePoint a, PlanePoint b) { return {a.x + b.x, a.y + b.y}; }
inline PlanePoint operator-(PlanePoint a, PlanePoint b) { return {a.x - b.x, a.y - b.y}; }
inline PlanePoint operator*(double f, PlanePoint a) { return {f * a.x, f * a.y}; }
/// Twice the area of the triangle with the origin; positive: `b` is left of `a`.
inline double cross(PlanePoint a, PlanePoint b) { return a.x * b.y - a.y * b.x; }
inline double dot(PlanePoint a, PlanePoint b) { return a.x * b.x + a.y * b.y; }
inline double length(PlanePoint a) { return std::hypot(a.x, a.y); }
inline PlanePoint between(PlanePoint a, PlanePoint b, double s) {
  return {std::lerp(a.x, b.x, s), std::lerp(a.y, b.y, s)};
}

}  // namespace gibbsteel::internal

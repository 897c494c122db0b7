#pragma once
/// Points of section maps: arrays for users, pairs of numbers for pickling.

#include <utility>
#include <vector>

#include "arrays.hpp"
#include "gibbsteel/section_map.hpp"

namespace gibbsteel::python {

using PointPairs = std::vector<std::pair<double, double>>;

/// Shape (n, 2).
inline py::array_t<double> array_of(const std::vector<SectionPoint>& points) {
  std::vector<double> numbers;
  for (const SectionPoint& p : points) numbers.insert(numbers.end(), {p.x, p.y});
  return read_only(numbers, {static_cast<py::ssize_t>(points.size()), 2});
}

inline PointPairs pairs_of(const std::vector<SectionPoint>& points) {
  PointPairs pairs;
  for (const SectionPoint& p : points) pairs.emplace_back(p.x, p.y);
  return pairs;
}

inline std::vector<SectionPoint> points_of(const PointPairs& pairs) {
  std::vector<SectionPoint> points;
  for (const auto& [x, y] : pairs) points.push_back({x, y});
  return points;
}

}  // namespace gibbsteel::python

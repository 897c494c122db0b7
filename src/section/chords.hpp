#pragma once
/// How boundaries that enter a triangle through its edges are joined inside it.

#include <optional>
#include <utility>
#include <vector>

#include "section/triangle_mesh.hpp"

namespace gibbsteel::internal {

/// A crossing met on the way around a triangle, counterclockwise.
struct PerimeterCrossing {
  EdgeKey edge;
  std::size_t index = 0;                        ///< into the crossings of the edge
  std::size_t before = 0, after = 0;            ///< labels
  std::size_t before_part = 0, after_part = 0;  ///< parts of the edge that they fill
  PlanePoint point;
};

/// All three edges must have been scanned.
std::vector<PerimeterCrossing> perimeter(const TriangleMesh& mesh,
                                         std::size_t triangle);

/// A boundary through a triangle, between two places of its perimeter, from < to.
/// Walking along it, the label before `from` is on the left, the one after on the
/// right.
struct Chord {
  std::size_t from = 0, to = 0;
  std::vector<PlanePoint> inner;  ///< points found between the two
};

/// The only way to join all crossings in pairs without any two boundaries meeting, such
/// that each has the same fields on both sides at both ends. Empty when there is none,
/// or more than one: then boundaries meet inside, or it cannot be told.
std::optional<std::vector<Chord>> join(const std::vector<PerimeterCrossing>& around);

/// A field that is narrower than one unit on its way through a triangle, though an edge
/// runs through it for longer: the place of its first boundary on the edge, in
/// `around`.
std::optional<std::size_t> narrow_field(const std::vector<PerimeterCrossing>& around);

}  // namespace gibbsteel::internal

#pragma once
/// Points of one boundary between two of its points.

#include <optional>
#include <vector>

#include "section/field_oracle.hpp"

namespace gibbsteel::internal {

/// A boundary to be followed from one point to another, with its fields on both sides.
struct BoundaryPiece {
  PlanePoint from, to;
  PhaseSet left, right;
  PlanePoint extent;  ///< of the plane: 0 to x, 0 to y
};

struct FollowedBoundary {
  /// So many that straight lines from point to point are off by less than half a unit
  /// in the middle; empty optional: the two points are not joined by one boundary with
  /// these fields on its sides.
  std::optional<std::vector<PlanePoint>> inner;
  std::size_t soaks = 0;
};

FollowedBoundary follow_boundary(const FieldOracle& oracle, const BoundaryPiece& piece);

}  // namespace gibbsteel::internal

#pragma once
/// Where the name of a field is written.

#include "section/outlines.hpp"

namespace gibbsteel::internal {

struct LabelPlace {
  PlanePoint at;
  double clearance = 0.0;  ///< distance to the outline, with the axes scaled to 1
};

/// The point of a field farthest from its outline, to about 1/200 of the plane. (Search
/// by quarters of squares, the most promising first.)
LabelPlace label_place(const FieldOutline& outline, PlanePoint extent);

}  // namespace gibbsteel::internal

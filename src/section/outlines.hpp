#pragma once
/// Closed outlines of the fields.

#include "section/section_lines.hpp"

namespace gibbsteel::internal {

using PlaneLoop = std::vector<PlanePoint>;  ///< closed; the first point is not repeated

struct FieldOutline {
  PlaneLoop outer;               ///< counterclockwise
  std::vector<PlaneLoop> holes;  ///< clockwise
  double area = 0.0;             ///< square units, less the holes
};

/// False for fields within the accuracy: less than four square units, or narrower than
/// three quarters of a unit on the whole.
bool is_resolved(const FieldOutline& outline);

/// As lines.field_labels.
std::vector<FieldOutline> field_outlines(const SectionLines& lines);

/// Outlines of the triangles that stayed open.
std::vector<PlaneLoop> open_outlines(const TracedSection& section);

bool is_inside(PlanePoint at, const FieldOutline& outline);

}  // namespace gibbsteel::internal

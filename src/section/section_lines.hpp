#pragma once
/// From a traced mesh to lines between nodes.

#include "section/section_tracer.hpp"

namespace gibbsteel::internal {

/// A boundary between two fields, or a stretch of the border of what is known. Fields
/// are numbered; kNone: outside.
struct SectionLine {
  std::size_t from = 0, to = 0;     ///< places: the same number is the same point
  std::size_t left = 0, right = 0;  ///< fields
  std::vector<PlanePoint> points;   ///< with both ends
};

/// A point where boundaries meet.
struct SectionMeeting {
  std::size_t place = 0;
  PlanePoint at;
  std::vector<std::size_t> fields;  ///< counterclockwise
};

struct SectionLines {
  std::vector<SectionLine> boundaries;
  std::vector<SectionLine> border;        ///< left: inside
  std::vector<std::size_t> field_labels;  ///< label of each field
  std::vector<SectionMeeting> meetings;
};

SectionLines section_lines(const TracedSection& section);

/// Boundaries shorter than that many units that end in a meeting are drawn together to
/// one point: they are nodes of more than three boundaries, seen at the tolerance.
inline constexpr double kShortestBoundary = 2.5;

void draw_together(SectionLines& lines);

}  // namespace gibbsteel::internal

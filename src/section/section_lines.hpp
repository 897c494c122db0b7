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

double length_of(const SectionLine& line);

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

/// @param components  elements, for the phase rule; see draw_together()
SectionLines section_lines(const TracedSection& section, std::size_t components);

/// Boundaries that end in a meeting and are shorter than that many units are drawn
/// together to one point: nodes of more than three boundaries, seen at the tolerance.
inline constexpr double kShortestBoundary = 2.5;
/// So are longer ones between two meetings across which several phases change though
/// the phase rule does not let them: there two boundaries cross at a small angle, and
/// the fields between them are narrower than a unit.
inline constexpr double kLongestCrossing = 150.0;

void draw_together(const TracedSection& section, std::size_t components,
                   SectionLines& lines);

/// More phases change across a boundary than one.
bool several_change(const PhaseSet& left, const PhaseSet& right);
/// The phase rule allows several changes along a line only in a reaction at one
/// temperature, with as many phases on both sides as there are elements.
bool is_reaction(const PhaseSet& left, const PhaseSet& right, std::size_t components);

}  // namespace gibbsteel::internal

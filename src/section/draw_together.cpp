#include <algorithm>
#include <iterator>
#include <map>

#include "section/section_lines.hpp"

namespace gibbsteel::internal {
namespace {

/// Places that become one.
class Groups {
 public:
  explicit Groups(const SectionLines& lines) {
    for (const SectionMeeting& meeting : lines.meetings)
      position_[meeting.place] = meeting.at;
    for (const SectionLine& line : lines.border)
      for (const auto& [place, point] :
           {std::pair{line.from, line.points.front()}, {line.to, line.points.back()}}) {
        position_[place] = point;
        fixed_[place] = true;
      }
  }

  std::size_t root(std::size_t place) const {
    for (auto at = parent_.find(place); at != parent_.end(); at = parent_.find(place))
      place = at->second;
    return place;
  }
  bool is_fixed(std::size_t place) const { return fixed_.contains(root(place)); }
  /// False when both lie on the border, or one is no place to which others go.
  bool unite(std::size_t a, std::size_t b) {
    a = root(a);
    b = root(b);
    if (a == b) return true;
    if (!position_.contains(a) || !position_.contains(b)) return false;
    if (fixed_.contains(b)) std::swap(a, b);
    if (fixed_.contains(b)) return false;
    if (!fixed_.contains(a)) position_[a] = between(position_[a], position_[b], 0.5);
    parent_[b] = a;
    return true;
  }
  void move(std::size_t& place, PlanePoint& point) const {
    place = root(place);
    const auto moved = position_.find(place);
    if (moved != position_.end()) point = moved->second;
  }

 private:
  std::map<std::size_t, PlanePoint> position_;
  std::map<std::size_t, bool> fixed_;
  std::map<std::size_t, std::size_t> parent_;
};

void unite_meetings(const Groups& groups, std::vector<SectionMeeting>& meetings) {
  std::vector<SectionMeeting> kept;
  for (SectionMeeting& meeting : meetings) {
    groups.move(meeting.place, meeting.at);
    const auto same = std::find_if(
        kept.begin(), kept.end(),
        [&](const SectionMeeting& other) { return other.place == meeting.place; });
    if (same == kept.end()) {
      kept.push_back(std::move(meeting));
      continue;
    }
    for (const std::size_t field : meeting.fields)
      if (std::find(same->fields.begin(), same->fields.end(), field) ==
          same->fields.end())
        same->fields.push_back(field);
  }
  meetings = std::move(kept);
}

std::size_t shared(const PhaseSet& left, const PhaseSet& right) {
  PhaseSet both;
  std::set_intersection(left.begin(), left.end(), right.begin(), right.end(),
                        std::back_inserter(both));
  return both.size();
}

}  // namespace

double length_of(const SectionLine& line) {
  double sum = 0.0;
  for (std::size_t i = 1; i < line.points.size(); ++i)
    sum += length(line.points[i] - line.points[i - 1]);
  return sum;
}

bool several_change(const PhaseSet& left, const PhaseSet& right) {
  return left.size() + right.size() > 2 * shared(left, right) + 1;
}

bool is_reaction(const PhaseSet& left, const PhaseSet& right, std::size_t components) {
  return several_change(left, right) && left.size() == components &&
         right.size() == components;
}

void draw_together(const TracedSection& section, std::size_t components,
                   SectionLines& lines) {
  Groups groups(lines);
  const auto set = [&](std::size_t field) -> const PhaseSet& {
    return section.labels[lines.field_labels[field]];
  };
  const auto is_crossing = [&](const SectionLine& line) {
    const PhaseSet &left = set(line.left), &right = set(line.right);
    return !left.empty() && !right.empty() && several_change(left, right) &&
           !is_reaction(left, right, components) && !groups.is_fixed(line.from) &&
           !groups.is_fixed(line.to) && length_of(line) < kLongestCrossing;
  };
  std::erase_if(lines.boundaries, [&](const SectionLine& line) {
    return line.from != line.to &&
           (length_of(line) < kShortestBoundary || is_crossing(line)) &&
           groups.unite(line.from, line.to);
  });
  for (SectionLine& line : lines.boundaries) {
    groups.move(line.from, line.points.front());
    groups.move(line.to, line.points.back());
  }
  unite_meetings(groups, lines.meetings);
}

}  // namespace gibbsteel::internal

#include <algorithm>
#include <map>

#include "section/section_lines.hpp"

namespace gibbsteel::internal {
namespace {

double length_of(const SectionLine& line) {
  double sum = 0.0;
  for (std::size_t i = 1; i < line.points.size(); ++i)
    sum += length(line.points[i] - line.points[i - 1]);
  return sum;
}

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
  /// False when both lie on the border, or one is no place to which others go.
  bool unite(std::size_t a, std::size_t b) {
    a = root(a);
    b = root(b);
    if (a == b) return true;
    if (!position_.contains(a) || !position_.contains(b)) return false;
    if (fixed_.contains(b)) std::swap(a, b);
    if (fixed_.contains(b)) return false;
    parent_[b] = a;
    return true;
  }
  void move(std::size_t& place, PlanePoint& point) const {
    const std::size_t to = root(place);
    if (to == place) return;
    place = to;
    point = position_.at(to);
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

}  // namespace

void draw_together(SectionLines& lines) {
  Groups groups(lines);
  std::erase_if(lines.boundaries, [&](const SectionLine& line) {
    return line.from != line.to && length_of(line) < kShortestBoundary &&
           groups.unite(line.from, line.to);
  });
  for (SectionLine& line : lines.boundaries) {
    groups.move(line.from, line.points.front());
    groups.move(line.to, line.points.back());
  }
  unite_meetings(groups, lines.meetings);
}

}  // namespace gibbsteel::internal

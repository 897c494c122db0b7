#include "section/section_lines.hpp"

#include <algorithm>

#include "section/field_parts.hpp"

namespace gibbsteel::internal {
namespace {

/// A piece of a line inside one triangle, or between two places of the border.
using Strand = SectionLine;

/// Numbers of places: corners of the mesh, crossings, meetings.
class Places {
 public:
  std::size_t corner(std::size_t id) { return number({id, kNone, kNone}); }
  std::size_t crossing(EdgeKey edge, std::size_t index) {
    return number({edge.first, edge.second, index});
  }
  std::size_t meeting(std::size_t triangle) { return number({kNone, triangle, kNone}); }

 private:
  std::size_t number(std::array<std::size_t, 3> name) {
    return numbers_.emplace(name, numbers_.size()).first->second;
  }
  std::map<std::array<std::size_t, 3>, std::size_t> numbers_;
};

class Collector {
 public:
  explicit Collector(const TracedSection& section)
      : section_(section), parts_(section) {}

  SectionLines run() {
    for (std::size_t t = 0; t < section_.triangles.size(); ++t)
      if (is_known(t)) take(t);
    SectionLines lines;
    lines.boundaries = chained(strands_);
    lines.border = std::move(border_);
    lines.field_labels = parts_.labels();
    lines.meetings = std::move(meetings_);
    return lines;
  }

 private:
  bool is_known(std::size_t t) const {
    return !section_.mesh.triangles()[t].halved &&
           section_.triangles[t].state != TriangleState::open;
  }

  void take(std::size_t t) {
    const auto around = perimeter(section_.mesh, t);
    for (const Chord& chord : section_.triangles[t].chords) take_chord(around, chord);
    if (section_.triangles[t].state == TriangleState::node) take_node(t, around);
    const auto& c = section_.mesh.triangles()[t].corners;
    for (std::size_t k = 0; k < 3; ++k) {
      const auto& sides =
          section_.mesh.edges().at(TriangleMesh::key(c[k], c[(k + 1) % 3])).triangles;
      const std::size_t other = sides[0] == t ? sides[1] : sides[0];
      if (other == kNone || !is_known(other)) take_border(c[k], c[(k + 1) % 3]);
    }
  }

  void take_chord(const std::vector<PerimeterCrossing>& around, const Chord& chord) {
    const auto &from = around[chord.from], &to = around[chord.to];
    Strand strand{places_.crossing(from.edge, from.index),
                  places_.crossing(to.edge, to.index),
                  parts_.field(from.edge, from.before_part),
                  parts_.field(from.edge, from.after_part),
                  {from.point}};
    strand.points.insert(strand.points.end(), chord.inner.begin(), chord.inner.end());
    strand.points.push_back(to.point);
    strands_.push_back(std::move(strand));
  }

  void take_node(std::size_t t, const std::vector<PerimeterCrossing>& around) {
    SectionMeeting meeting;
    meeting.place = places_.meeting(t);
    const double share = 1.0 / static_cast<double>(around.size());
    for (const auto& crossing : around)
      meeting.at = meeting.at + share * crossing.point;
    for (const auto& crossing : around) {
      const std::size_t before = parts_.field(crossing.edge, crossing.before_part);
      const std::size_t after = parts_.field(crossing.edge, crossing.after_part);
      meeting.fields.push_back(after);
      strands_.push_back({places_.crossing(crossing.edge, crossing.index),
                          meeting.place,
                          before,
                          after,
                          {crossing.point, meeting.at}});
    }
    meetings_.push_back(std::move(meeting));
  }

  /// The edge from corner a to corner b, with what is known on its left.
  void take_border(std::size_t a, std::size_t b) {
    const EdgeKey key = TriangleMesh::key(a, b);
    const Crossings& on = *section_.mesh.edges().at(key).crossings;
    const std::size_t many = on.at.size();
    std::size_t place = places_.corner(a);
    PlanePoint point = section_.mesh.corners()[a];
    for (std::size_t n = 0; n <= many; ++n) {
      const std::size_t part = a < b ? n : many - n;
      std::size_t next = places_.corner(b);
      PlanePoint next_point = section_.mesh.corners()[b];
      if (n < many) {
        const std::size_t index = a < b ? n : many - 1 - n;
        next = places_.crossing(key, index);
        next_point = between(section_.mesh.corners()[key.first],
                             section_.mesh.corners()[key.second], on.at[index]);
      }
      border_.push_back(
          {place, next, parts_.field(key, part), kNone, {point, next_point}});
      place = next;
      point = next_point;
    }
  }

  static Strand turned(Strand strand) {
    std::swap(strand.from, strand.to);
    std::swap(strand.left, strand.right);
    std::reverse(strand.points.begin(), strand.points.end());
    return strand;
  }

  /// Strands joined at places where exactly two with the same sides meet.
  static std::vector<SectionLine> chained(const std::vector<Strand>& strands) {
    std::map<std::size_t, std::vector<std::size_t>> at_place;
    for (std::size_t i = 0; i < strands.size(); ++i) {
      at_place[strands[i].from].push_back(i);
      at_place[strands[i].to].push_back(i);
    }
    std::vector<bool> used(strands.size(), false);
    const auto extend = [&](SectionLine& line) {
      while (at_place[line.to].size() == 2 && line.to != line.from) {
        const auto& both = at_place[line.to];
        const std::size_t next = used[both[0]] ? both[1] : both[0];
        if (used[next]) return;
        used[next] = true;
        const Strand strand =
            strands[next].from == line.to ? strands[next] : turned(strands[next]);
        line.points.insert(line.points.end(), strand.points.begin() + 1,
                           strand.points.end());
        line.to = strand.to;
      }
    };
    std::vector<SectionLine> lines;
    for (std::size_t i = 0; i < strands.size(); ++i) {
      if (used[i]) continue;
      used[i] = true;
      SectionLine line = strands[i];
      extend(line);
      line = turned(std::move(line));
      extend(line);
      lines.push_back(turned(std::move(line)));
    }
    return lines;
  }

  const TracedSection& section_;
  FieldParts parts_;
  Places places_;
  std::vector<Strand> strands_;
  std::vector<SectionLine> border_;
  std::vector<SectionMeeting> meetings_;
};

}  // namespace

SectionLines section_lines(const TracedSection& section, std::size_t components) {
  SectionLines lines = Collector(section).run();
  draw_together(section, components, lines);
  return lines;
}

}  // namespace gibbsteel::internal

#include "section/outlines.hpp"

#include <algorithm>

namespace gibbsteel::internal {
namespace {

/// A line in the direction that has the field on its left.
struct Arc {
  std::size_t from = 0, to = 0;
  std::vector<PlanePoint> points;
};

double twice_area(const PlaneLoop& loop) {
  double sum = 0.0;
  for (std::size_t i = 0; i < loop.size(); ++i)
    sum += cross(loop[i] - loop[0], loop[(i + 1) % loop.size()] - loop[0]);
  return sum;
}

/// Arcs end to end, until each is back at its start.
std::vector<PlaneLoop> loops_of(const std::vector<Arc>& arcs) {
  std::multimap<std::size_t, std::size_t> starts;
  for (std::size_t i = 0; i < arcs.size(); ++i) starts.emplace(arcs[i].from, i);
  std::vector<PlaneLoop> loops;
  while (!starts.empty()) {
    PlaneLoop loop;
    auto next = starts.begin();
    while (next != starts.end()) {
      const Arc& arc = arcs[next->second];
      starts.erase(next);
      loop.insert(loop.end(), arc.points.begin(), arc.points.end() - 1);
      next = starts.find(arc.to);
    }
    loops.push_back(std::move(loop));
  }
  return loops;
}

FieldOutline outline_of(const std::vector<Arc>& arcs) {
  FieldOutline outline;
  auto loops = loops_of(arcs);
  const auto by_area = [](const PlaneLoop& a, const PlaneLoop& b) {
    return twice_area(a) < twice_area(b);
  };
  const auto outer = std::max_element(loops.begin(), loops.end(), by_area);
  for (auto loop = loops.begin(); loop != loops.end(); ++loop) {
    outline.area += 0.5 * twice_area(*loop);
    if (loop != outer && loop->size() > 2) outline.holes.push_back(std::move(*loop));
  }
  if (outer != loops.end()) outline.outer = std::move(*outer);
  return outline;
}

bool crosses(PlanePoint at, const PlaneLoop& loop) {
  bool odd = false;
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const PlanePoint a = loop[i], b = loop[(i + 1) % loop.size()];
    if ((a.y > at.y) == (b.y > at.y)) continue;
    if (at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x)) odd = !odd;
  }
  return odd;
}

}  // namespace

bool is_resolved(const FieldOutline& outline) {
  constexpr double kLeastArea = 4.0, kLeastWidth = 0.75;
  double around = 0.0;
  for (std::size_t i = 0; i < outline.outer.size(); ++i)
    around += length(outline.outer[(i + 1) % outline.outer.size()] - outline.outer[i]);
  return outline.area >= kLeastArea && 2.0 * outline.area >= kLeastWidth * around;
}

std::vector<FieldOutline> field_outlines(const SectionLines& lines) {
  std::vector<std::vector<Arc>> arcs(lines.field_labels.size());
  for (const SectionLine& line : lines.border)
    arcs[line.left].push_back({line.from, line.to, line.points});
  for (const SectionLine& line : lines.boundaries) {
    arcs[line.left].push_back({line.from, line.to, line.points});
    arcs[line.right].push_back(
        {line.to, line.from, {line.points.rbegin(), line.points.rend()}});
  }
  std::vector<FieldOutline> outlines;
  for (const auto& of_field : arcs) outlines.push_back(outline_of(of_field));
  return outlines;
}

std::vector<PlaneLoop> open_outlines(const TracedSection& section) {
  const auto is_open = [&](std::size_t t) {
    return t != kNone && section.triangles[t].state == TriangleState::open;
  };
  std::vector<Arc> arcs;
  for (std::size_t t = 0; t < section.triangles.size(); ++t) {
    if (section.mesh.triangles()[t].halved || !is_open(t)) continue;
    const auto& c = section.mesh.triangles()[t].corners;
    for (std::size_t k = 0; k < 3; ++k) {
      const std::size_t a = c[k], b = c[(k + 1) % 3];
      const auto& sides = section.mesh.edges().at(TriangleMesh::key(a, b)).triangles;
      if (!is_open(sides[0] == t ? sides[1] : sides[0]))
        arcs.push_back({a, b, {section.mesh.corners()[a], section.mesh.corners()[b]}});
    }
  }
  return loops_of(arcs);
}

bool is_inside(PlanePoint at, const FieldOutline& outline) {
  bool odd = crosses(at, outline.outer);
  for (const PlaneLoop& hole : outline.holes)
    if (crosses(at, hole)) odd = !odd;
  return odd;
}

}  // namespace gibbsteel::internal

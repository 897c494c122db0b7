#include "section/field_parts.hpp"

#include <numeric>

namespace gibbsteel::internal {

FieldParts::FieldParts(const TracedSection& section) {
  std::size_t count = 0;
  for (const auto& [key, edge] : section.mesh.edges()) {
    if (!edge.crossings) continue;
    first_part_[key] = count;
    count += edge.crossings->labels.size();
  }
  parent_.resize(count);
  std::iota(parent_.begin(), parent_.end(), std::size_t{0});
  std::vector<bool> used(count, false);
  for (std::size_t t = 0; t < section.triangles.size(); ++t) {
    if (section.mesh.triangles()[t].halved ||
        section.triangles[t].state == TriangleState::open)
      continue;
    unite_inside(section, t);
    const auto& c = section.mesh.triangles()[t].corners;
    for (std::size_t k = 0; k < 3; ++k) {
      const EdgeKey key = TriangleMesh::key(c[k], c[(k + 1) % 3]);
      const std::size_t many = section.mesh.edges().at(key).crossings->labels.size();
      for (std::size_t p = 0; p < many; ++p) used[part_id(key, p)] = true;
    }
  }
  number_.assign(count, kNone);
  for (const auto& [key, edge] : section.mesh.edges()) {
    if (!edge.crossings) continue;
    for (std::size_t p = 0; p < edge.crossings->labels.size(); ++p) {
      const std::size_t id = part_id(key, p);
      if (!used[id] || number_[root(id)] != kNone) continue;
      number_[root(id)] = labels_.size();
      labels_.push_back(edge.crossings->labels[p]);
    }
  }
}

std::size_t FieldParts::field(EdgeKey edge, std::size_t part) const {
  return number_[root(part_id(edge, part))];
}

std::size_t FieldParts::part_id(EdgeKey edge, std::size_t part) const {
  return first_part_.at(edge) + part;
}

std::size_t FieldParts::root(std::size_t part) const {
  while (parent_[part] != part) part = parent_[part];
  return part;
}

void FieldParts::unite(std::size_t a, std::size_t b) {
  const std::size_t low = std::min(root(a), root(b)), high = std::max(root(a), root(b));
  parent_[high] = low;
}

void FieldParts::unite_inside(const TracedSection& section, std::size_t triangle) {
  const auto& c = section.mesh.triangles()[triangle].corners;
  const auto part_at = [&](std::size_t corner, std::size_t other) {
    const EdgeKey key = TriangleMesh::key(corner, other);
    const auto& labels = section.mesh.edges().at(key).crossings->labels;
    return part_id(key, corner < other ? 0 : labels.size() - 1);
  };
  for (std::size_t k = 0; k < 3; ++k)
    unite(part_at(c[k], c[(k + 1) % 3]), part_at(c[k], c[(k + 2) % 3]));
  const auto around = perimeter(section.mesh, triangle);
  for (const Chord& chord : section.triangles[triangle].chords) {
    const auto &from = around[chord.from], &to = around[chord.to];
    unite(part_id(from.edge, from.after_part), part_id(to.edge, to.before_part));
    unite(part_id(from.edge, from.before_part), part_id(to.edge, to.after_part));
  }
}

}  // namespace gibbsteel::internal

#include "section/triangle_mesh.hpp"

#include <algorithm>

namespace gibbsteel::internal {

TriangleMesh::TriangleMesh(double width, double height, std::size_t columns,
                           std::size_t rows) {
  const auto share = [](std::size_t k, std::size_t n) {
    return static_cast<double>(k) / static_cast<double>(n);
  };
  for (std::size_t r = 0; r <= rows; ++r)
    for (std::size_t c = 0; c <= columns; ++c)
      corners_.push_back({width * share(c, columns), height * share(r, rows)});
  for (std::size_t r = 0; r < rows; ++r)
    for (std::size_t c = 0; c < columns; ++c) {
      const std::size_t low = r * (columns + 1) + c, high = low + columns + 1;
      add({high + 1, low, low + 1});
      add({low, high + 1, high});
    }
}

void TriangleMesh::add(std::array<std::size_t, 3> corners) {
  const std::size_t id = triangles_.size();
  triangles_.push_back({corners, false});
  for (std::size_t k = 0; k < 3; ++k) {
    auto& sides = edges_[key(corners[k], corners[(k + 1) % 3])].triangles;
    sides[sides[0] == kNone ? 0 : 1] = id;
  }
}

double TriangleMesh::length(EdgeKey edge) const {
  return internal::length(corners_[edge.second] - corners_[edge.first]);
}

double TriangleMesh::size(std::size_t triangle) const {
  const auto& c = triangles_[triangle].corners;
  return std::max(
      {length(key(c[0], c[1])), length(key(c[1], c[2])), length(key(c[2], c[0]))});
}

std::size_t TriangleMesh::neighbour(std::size_t triangle) const {
  const auto& c = triangles_[triangle].corners;
  const auto& sides = edges_.at(key(c[0], c[1])).triangles;
  return sides[0] == triangle ? sides[1] : sides[0];
}

void TriangleMesh::halve(std::size_t triangle) {
  const auto c = triangles_[triangle].corners;
  const EdgeKey edge = key(c[0], c[1]);
  std::size_t other = neighbour(triangle);
  if (other != kNone) {
    const auto& o = triangles_[other].corners;
    if (key(o[0], o[1]) != edge) {
      halve(other);
      other = neighbour(triangle);
    }
  }
  const std::size_t middle = corners_.size();
  corners_.push_back(between(corners_[edge.first], corners_[edge.second], 0.5));
  split_edge(edge, middle);
  replace(triangle, middle);
  if (other != kNone) replace(other, middle);
}

void TriangleMesh::split_edge(EdgeKey edge, std::size_t middle) {
  const auto whole = edges_.extract(edge).mapped();
  MeshEdge& low = edges_[{edge.first, middle}];
  MeshEdge& high = edges_[{edge.second, middle}];
  if (!whole.crossings) return;
  auto [first, second] = halves(*whole.crossings);
  low.crossings = std::move(first);
  high.crossings = reversed(second);
}

void TriangleMesh::replace(std::size_t triangle, std::size_t middle) {
  const auto c = triangles_[triangle].corners;
  triangles_[triangle].halved = true;
  for (const std::size_t k : {std::size_t{1}, std::size_t{2}}) {
    auto& sides = edges_.at(key(c[k], c[(k + 1) % 3])).triangles;
    if (sides[0] == triangle) sides[0] = sides[1];
    sides[1] = kNone;
  }
  add({c[2], c[0], middle});
  add({c[1], c[2], middle});
}

}  // namespace gibbsteel::internal

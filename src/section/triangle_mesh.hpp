#pragma once
/// A rectangle cut into triangles that fit edge to edge, refined by bisection.
///
/// Each triangle is halved at the edge opposite its newest corner, together with its
/// neighbour there, so that no corner ever lies inside an edge and no angle gets small
/// (Mitchell, ACM Trans. Math. Softw. 15 (1989) 326, from memory).

#include <array>
#include <limits>
#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "section/crossings.hpp"
#include "section/plane_point.hpp"

namespace gibbsteel::internal {

inline constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();

using EdgeKey = std::pair<std::size_t, std::size_t>;  ///< corners, the lower one first

struct MeshEdge {
  std::array<std::size_t, 2> triangles{kNone, kNone};
  std::optional<Crossings> crossings;  ///< from the lower corner; once known
};

struct MeshTriangle {
  std::array<std::size_t, 3> corners{};  ///< counterclockwise; the newest is the last
  bool halved = false;                   ///< replaced by two others
};

class TriangleMesh {
 public:
  /// @param columns, rows  cells of two triangles each, >= 1
  TriangleMesh(double width, double height, std::size_t columns, std::size_t rows);

  const std::vector<PlanePoint>& corners() const noexcept { return corners_; }
  const std::vector<MeshTriangle>& triangles() const noexcept { return triangles_; }
  std::map<EdgeKey, MeshEdge>& edges() noexcept { return edges_; }
  const std::map<EdgeKey, MeshEdge>& edges() const noexcept { return edges_; }

  static EdgeKey key(std::size_t a, std::size_t b) {
    return a < b ? EdgeKey{a, b} : EdgeKey{b, a};
  }
  double length(EdgeKey edge) const;
  /// Of the longest edge.
  double size(std::size_t triangle) const;
  /// Halves a triangle, and others as far as the fit demands. The crossings of a halved
  /// edge go to its halves.
  void halve(std::size_t triangle);

 private:
  void add(std::array<std::size_t, 3> corners);
  std::size_t neighbour(std::size_t triangle) const;
  void split_edge(EdgeKey edge, std::size_t middle);
  void replace(std::size_t triangle, std::size_t middle);

  std::vector<PlanePoint> corners_;
  std::vector<MeshTriangle> triangles_;
  std::map<EdgeKey, MeshEdge> edges_;
};

}  // namespace gibbsteel::internal

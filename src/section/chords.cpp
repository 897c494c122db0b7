#include "section/chords.hpp"

namespace gibbsteel::internal {
namespace {

/// More crossings than that are left to smaller triangles.
constexpr std::size_t kMostCrossings = 12;

class Joiner {
 public:
  explicit Joiner(const std::vector<PerimeterCrossing>& around) : around_(around) {}

  /// Ways to join the crossings that are still free, up to two.
  int count(std::vector<bool>& taken) {
    std::size_t i = 0;
    while (i < taken.size() && taken[i]) ++i;
    if (i == taken.size()) {
      found_ = open_;
      return 1;
    }
    int ways = 0;
    taken[i] = true;
    // A partner may not leave an odd number between the two.
    for (std::size_t j = i + 1; j < taken.size() && ways < 2; ++j) {
      if (taken[j]) break;  // an earlier pair lies across
      if ((j - i) % 2 == 0 || !fits(i, j)) continue;
      ways += inside_and_rest(i, j, taken);
    }
    taken[i] = false;
    return ways;
  }

  std::vector<Chord> found() const { return found_; }

 private:
  bool fits(std::size_t i, std::size_t j) const {
    return around_[i].after == around_[j].before &&
           around_[i].before == around_[j].after;
  }

  int inside_and_rest(std::size_t i, std::size_t j, std::vector<bool>& taken) {
    taken[j] = true;
    open_.push_back({i, j, {}});
    const int ways = count(taken);
    open_.pop_back();
    taken[j] = false;
    return ways;
  }

  const std::vector<PerimeterCrossing>& around_;
  std::vector<Chord> open_, found_;
};

}  // namespace

std::vector<PerimeterCrossing> perimeter(const TriangleMesh& mesh,
                                         std::size_t triangle) {
  std::vector<PerimeterCrossing> around;
  const auto& c = mesh.triangles()[triangle].corners;
  for (std::size_t k = 0; k < 3; ++k) {
    const std::size_t a = c[k], b = c[(k + 1) % 3];
    const EdgeKey edge = TriangleMesh::key(a, b);
    const Crossings& on = *mesh.edges().at(edge).crossings;
    for (std::size_t n = 0; n < on.at.size(); ++n) {
      const bool forward = a < b;
      const std::size_t i = forward ? n : on.at.size() - 1 - n;
      const std::size_t before = forward ? i : i + 1, after = forward ? i + 1 : i;
      around.push_back(
          {edge, i, on.labels[before], on.labels[after], before, after,
           between(mesh.corners()[edge.first], mesh.corners()[edge.second], on.at[i])});
    }
  }
  return around;
}

std::optional<std::vector<Chord>> join(const std::vector<PerimeterCrossing>& around) {
  if (around.size() % 2 != 0 || around.size() > kMostCrossings) return std::nullopt;
  Joiner joiner(around);
  std::vector<bool> taken(around.size(), false);
  if (joiner.count(taken) != 1) return std::nullopt;
  return joiner.found();
}

std::optional<std::size_t> narrow_field(const std::vector<PerimeterCrossing>& around) {
  for (std::size_t k = 0; k + 1 < around.size(); ++k) {
    const PerimeterCrossing &in = around[k], &out = around[k + 1];
    if (in.edge != out.edge || in.before == out.after) continue;
    // The field has closed where its neighbours share a boundary of their own.
    for (const PerimeterCrossing& closed : around) {
      if (closed.before != out.after || closed.after != in.before) continue;
      const PlanePoint across = out.point - in.point;
      const PlanePoint along = closed.point - between(in.point, out.point, 0.5);
      if (std::abs(cross(across, along)) < length(along)) return k;
    }
  }
  return std::nullopt;
}

}  // namespace gibbsteel::internal

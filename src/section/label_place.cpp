#include "section/label_place.hpp"

#include <algorithm>
#include <queue>

namespace gibbsteel::internal {
namespace {

constexpr double kEnough = 0.005;  ///< of the plane
constexpr int kMostCells = 20000;

/// Positive inside.
double clearance(PlanePoint at, const FieldOutline& outline) {
  double nearest = HUGE_VAL;
  const auto look = [&](const PlaneLoop& loop) {
    for (std::size_t i = 0; i < loop.size(); ++i)
      nearest =
          std::min(nearest, distance_to(at, loop[i], loop[(i + 1) % loop.size()]));
  };
  look(outline.outer);
  for (const PlaneLoop& hole : outline.holes) look(hole);
  return is_inside(at, outline) ? nearest : -nearest;
}

FieldOutline scaled(FieldOutline outline, PlanePoint extent) {
  const auto scale = [&](PlaneLoop& loop) {
    for (PlanePoint& p : loop) p = {p.x / extent.x, p.y / extent.y};
  };
  scale(outline.outer);
  for (PlaneLoop& hole : outline.holes) scale(hole);
  return outline;
}

/// A square that may hold a better point than the best known.
struct Cell {
  PlanePoint middle;
  double half, here;
  double best() const { return here + half * std::sqrt(2.0); }
  bool operator<(const Cell& other) const { return best() < other.best(); }
};

std::priority_queue<Cell> first_cells(const FieldOutline& outline) {
  const auto by_x = [](PlanePoint a, PlanePoint b) { return a.x < b.x; };
  const auto by_y = [](PlanePoint a, PlanePoint b) { return a.y < b.y; };
  const auto& loop = outline.outer;
  const auto [left, right] = std::minmax_element(loop.begin(), loop.end(), by_x);
  const auto [low, high] = std::minmax_element(loop.begin(), loop.end(), by_y);
  const double size = std::max(std::min(right->x - left->x, high->y - low->y), 0.002);
  std::priority_queue<Cell> cells;
  for (double x = left->x; x < right->x; x += size)
    for (double y = low->y; y < high->y; y += size) {
      const PlanePoint middle{x + 0.5 * size, y + 0.5 * size};
      cells.push({middle, 0.5 * size, clearance(middle, outline)});
    }
  return cells;
}

}  // namespace

LabelPlace label_place(const FieldOutline& outline, PlanePoint extent) {
  if (outline.outer.size() < 3) return {};
  const FieldOutline unit = scaled(outline, extent);
  auto cells = first_cells(unit);
  LabelPlace best{{}, -HUGE_VAL};
  for (int k = 0; k < kMostCells && !cells.empty(); ++k) {
    const Cell cell = cells.top();
    cells.pop();
    if (cell.here > best.clearance)
      best = {{cell.middle.x * extent.x, cell.middle.y * extent.y}, cell.here};
    const double least =
        best.clearance > 0.0 ? std::min(kEnough, best.clearance) : 1e-7;
    if (cell.best() - best.clearance < least) break;
    const double half = 0.5 * cell.half;
    for (const double dx : {-half, half})
      for (const double dy : {-half, half}) {
        const PlanePoint middle = cell.middle + PlanePoint{dx, dy};
        cells.push({middle, half, clearance(middle, unit)});
      }
  }
  return best;
}

}  // namespace gibbsteel::internal

#include "section/follow_boundary.hpp"

#include <algorithm>

#include "section/crossings.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kTolerance = 0.2;    ///< of a point, along the line across
constexpr double kFlat = 0.5;         ///< the middle is off by less: straight enough
constexpr double kShort = 2.0;        ///< pieces that are too short to be off
constexpr double kFirstReach = 0.02;  ///< of the line across, relative to the piece
constexpr std::size_t kRight = 0, kLeft = 1;
constexpr int kMostHalvings = 10;

class Follower {
 public:
  Follower(const FieldOracle& oracle, const BoundaryPiece& piece)
      : oracle_(oracle), piece_(piece) {}

  FollowedBoundary run() {
    FollowedBoundary followed;
    if (follow(piece_.from, piece_.to, kMostHalvings)) followed.inner = points_;
    followed.soaks = soaks_;
    return followed;
  }

 private:
  bool follow(PlanePoint from, PlanePoint to, int halvings) {
    const double apart = length(to - from);
    if (apart < kShort) return true;
    const auto middle = point_beside(from, to);
    if (!middle || halvings == 0) return false;
    const PlanePoint chord_middle = between(from, to, 0.5);
    if (length(*middle - chord_middle) < kFlat) {
      points_.push_back(*middle);
      return true;
    }
    if (!follow(from, *middle, halvings - 1)) return false;
    points_.push_back(*middle);
    return follow(*middle, to, halvings - 1);
  }

  /// The point of the boundary on the line across the middle of a chord.
  std::optional<PlanePoint> point_beside(PlanePoint from, PlanePoint to) {
    const PlanePoint along = to - from;
    const double apart = length(along);
    const PlanePoint left = {-along.y / apart, along.x / apart};
    for (double reach = std::max(4.0, kFirstReach * apart); reach < 0.55 * apart + 4.0;
         reach *= 3.0)
      if (const auto found = crossing(between(from, to, 0.5), left, reach))
        return found;
    return std::nullopt;
  }

  /// Nearest change from the right field to the left one.
  std::optional<PlanePoint> crossing(PlanePoint middle, PlanePoint left, double reach) {
    const double down = std::min(reach, room(middle, -1.0 * left));
    const double up = std::min(reach, room(middle, left));
    if (down + up < kTolerance) return std::nullopt;
    const PlanePoint start = middle - down * left, end = middle + up * left;
    const FieldsOnLine fields = oracle_.along(start, end, kTolerance);
    soaks_ += fields.soaks;
    const Crossings crossings = numbered(fields, length(end - start));
    std::optional<PlanePoint> nearest;
    for (std::size_t k = 0; k < crossings.at.size(); ++k) {
      if (crossings.labels[k] != kRight || crossings.labels[k + 1] != kLeft) continue;
      const PlanePoint point = between(start, end, crossings.at[k]);
      if (!nearest || length(point - middle) < length(*nearest - middle))
        nearest = point;
    }
    return nearest;
  }

  /// Without fields narrower than a unit.
  Crossings numbered(const FieldsOnLine& fields, double extent) const {
    std::vector<PhaseSet> sets{piece_.right, piece_.left};
    Crossings crossings{{}, fields.at};
    for (const PhaseSet& set : fields.sets) {
      const auto known = std::find(sets.begin(), sets.end(), set);
      crossings.labels.push_back(static_cast<std::size_t>(known - sets.begin()));
      if (known == sets.end()) sets.push_back(set);
    }
    merge_narrow(extent, crossings);
    return crossings;
  }

  /// Distance to the border of the plane in a direction of length 1.
  double room(PlanePoint at, PlanePoint direction) const {
    const auto axis = [](double x, double dx, double most) {
      if (dx > 0.0) return std::max(0.0, (most - x) / dx);
      return dx < 0.0 ? std::max(0.0, -x / dx) : HUGE_VAL;
    };
    return std::min(axis(at.x, direction.x, piece_.extent.x),
                    axis(at.y, direction.y, piece_.extent.y));
  }

  const FieldOracle& oracle_;
  const BoundaryPiece& piece_;
  std::vector<PlanePoint> points_;
  std::size_t soaks_ = 0;
};

}  // namespace

FollowedBoundary follow_boundary(const FieldOracle& oracle,
                                 const BoundaryPiece& piece) {
  return Follower(oracle, piece).run();
}

}  // namespace gibbsteel::internal

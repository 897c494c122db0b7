#include "continuation/solve_line.hpp"

namespace gibbsteel::internal {
namespace {

using Sink = std::function<void(std::size_t, Equilibrium&&)>;

/// What waits for the next anchor.
class Stretch {
 public:
  Stretch(const PhaseSystem& system, const SolveOptions& options,
          std::span<const LinePoint> points, const Sink& sink)
      : system_(system), options_(options), points_(points), sink_(sink) {}

  void add(Equilibrium result) { waiting_.push_back(std::move(result)); }

  void hand_over() {
    for (Equilibrium& result : waiting_) sink_(first_++, std::move(result));
    waiting_.clear();
  }

  /// All that waits, cold. @return how many
  long solve_again() {
    const auto count = static_cast<long>(waiting_.size());
    for (std::size_t k = 0; k < waiting_.size(); ++k) {
      const LinePoint& point = points_[first_ + k];
      waiting_[k] =
          minimize(system_, point.temperature, point.mole_fractions, options_);
    }
    hand_over();
    return count;
  }

 private:
  const PhaseSystem& system_;
  const SolveOptions& options_;
  std::span<const LinePoint> points_;
  const Sink& sink_;
  std::size_t first_ = 0;
  std::vector<Equilibrium> waiting_;
};

}  // namespace

LineCounts solve_line(const PhaseSystem& system, const SolveOptions& options,
                      std::span<const LinePoint> points, const Sink& sink) {
  LineSolver solver(system, options);
  Stretch stretch(system, options, points, sink);
  long again = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    // The last point before a cold one closes its stretch.
    if (solver.far(points[i].temperature, points[i].mole_fractions) ||
        solver.distance() >= 1.0) {
      if (solver.certify())
        stretch.hand_over();
      else
        again += stretch.solve_again();
    }
    solver.next(points[i].temperature, points[i].mole_fractions);
    stretch.add(solver.equilibrium());
  }
  if (solver.certify())
    stretch.hand_over();
  else
    again += stretch.solve_again();
  LineCounts counts = solver.counts();
  counts.again = again;
  return counts;
}

}  // namespace gibbsteel::internal

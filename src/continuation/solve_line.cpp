#include "continuation/solve_line.hpp"

#include <algorithm>

#include "continuation/convexity_audit.hpp"

namespace gibbsteel::internal {
namespace {

using Sink = std::function<bool(std::size_t, Equilibrium&&)>;

/// Points are handed over no later than this many after they were solved.
constexpr std::size_t kLongestStretch = 128;

class Line {
 public:
  Line(const PhaseSystem& system, const SolveOptions& options,
       std::span<const LinePoint> points, const Sink& sink, ConditionNumbers numbers)
      : system_(system),
        options_(options),
        points_(points),
        sink_(sink),
        numbers_(numbers),
        solver_(system, options) {}

  LineCounts run() {
    for (std::size_t i = 0; i < points_.size() && !ended_; ++i) {
      const LinePoint& point = points_[i];
      if (solver_.distance() >= 1.0 || next_ == kLongestStretch || leaps_to(point))
        close();
      if (ended_) break;
      solver_.next(point.temperature, point.mole_fractions);
      if (next_ == results_.size()) results_.emplace_back();
      solver_.equilibrium(results_[next_], numbers_);
      if (solver_.is_cold()) solve_again();
      ++next_;
    }
    if (!ended_) close();
    LineCounts counts = solver_.counts();
    counts.again = again_;
    return counts;
  }

 private:
  /// A step that may well not be followed: what waits is not to be put in doubt by it.
  bool leaps_to(const LinePoint& point) const noexcept {
    return solver_.far(point.temperature, point.mole_fractions) ||
           solver_.step_to(point.temperature, point.mole_fractions) >= 1.0;
  }

  /// Results that wait for an anchor.
  std::span<Equilibrium> waiting() noexcept { return {results_.data(), next_}; }

  /// Ends the stretch with an anchor; what it puts in doubt is solved cold.
  void close() {
    if (next_ == 0) return;
    if (!solver_.certify())
      solve_again();
    else if (waiting().back().report.certificate == Certificate::followed)
      certified(waiting().back().report);
    audit();
    for (Equilibrium& result : waiting())
      if (!ended_) ended_ = !sink_(first_++, std::move(result));
    next_ = 0;
  }

  /// Energies that cannot all be the lowest ones are solved again, cold; where that
  /// does not help the points are flagged.
  void audit() {
    ConvexityAudit again = audit_;
    bool odd = false;
    for (std::size_t k = 0; k < next_; ++k) odd = !add_to(audit_, k) || odd;
    if (!odd) return;
    solver_.forget();
    solve_again();
    std::vector<bool> doubted(next_, false);
    for (std::size_t k = 0; k < next_; ++k)
      if (!add_to(again, k))
        std::fill_n(doubted.begin() + static_cast<std::ptrdiff_t>(k < 2 ? 0 : k - 2),
                    std::min<std::size_t>(k + 1, 3), true);
    for (std::size_t k = 0; k < next_; ++k)
      if (doubted[k]) doubt(results_[k].report);
    audit_ = std::move(again);
  }

  bool add_to(ConvexityAudit& audit, std::size_t k) const {
    return audit.add(results_[k], points_[first_ + k].mole_fractions,
                     options_.stability_tolerance);
  }

  static void doubt(SolveReport& report) {
    report.status = SolveStatus::stalled;
    report.reason =
        "the energies of the points around are not concave in temperature or not "
        "convex in composition: one of them is not the lowest, or the parameter file "
        "has a negative heat capacity there";
  }

  /// Solves cold what waits without an anchor behind it: the next one found a phase
  /// that was not tracked, or the line could not be followed to it.
  void solve_again() {
    for (std::size_t k = 0; k < next_; ++k) {
      if (results_[k].report.certificate != Certificate::followed) continue;
      const LinePoint& point = points_[first_ + k];
      results_[k] =
          minimize(system_, point.temperature, point.mole_fractions, options_);
      ++again_;
    }
  }

  static void certified(SolveReport& report) {
    report.certificate = Certificate::many_starts;
    report.reason = "converged; no phase found below the tangent plane";
  }

  const PhaseSystem& system_;
  const SolveOptions& options_;
  std::span<const LinePoint> points_;
  const Sink& sink_;
  const ConditionNumbers numbers_;
  LineSolver solver_;
  ConvexityAudit audit_;
  std::vector<Equilibrium> results_;  ///< their memory serves one stretch after another
  std::size_t next_ = 0;              ///< so many of them wait
  std::size_t first_ = 0;             ///< point of the first that waits
  bool ended_ = false;
  long again_ = 0;
};

/// There is nothing to follow: every result says so.
LineCounts solve_each(const PhaseSystem& system, const SolveOptions& options,
                      std::span<const LinePoint> points, const Sink& sink) {
  LineCounts counts;
  for (std::size_t i = 0; i < points.size(); ++i, ++counts.points, ++counts.cold)
    if (!sink(i, minimize(system, points[i].temperature, points[i].mole_fractions,
                          options)))
      break;
  return counts;
}

}  // namespace

LineCounts solve_line(const PhaseSystem& system, const SolveOptions& options,
                      std::span<const LinePoint> points, const Sink& sink,
                      ConditionNumbers numbers) {
  if (system.phases().empty()) return solve_each(system, options, points, sink);
  return Line(system, options, points, sink, numbers).run();
}

}  // namespace gibbsteel::internal

#pragma once
/// Many conditions of one phase system, each near the one before: the assemblage is
/// followed by Newton steps, all minima of absent phases are tracked, and what was
/// followed is certified where the line has come far.
///
/// An anchor is a point with a test from many starts for minima near the plane. Between
/// two anchors the tracked minima, and those across a kink of a present phase, are the
/// certificate; a present set that jumps is not followed. When an anchor finds a phase
/// below its plane that was not tracked, every point since the last anchor is solved
/// anew, cold.

#include <functional>
#include <memory>

#include "continuation/moving_conditions.hpp"
#include "continuation/predictor.hpp"
#include "continuation/tracked_minimum.hpp"
#include "gibbsteel/minimizer.hpp"
#include "minimizer/two_level_newton.hpp"

namespace gibbsteel::internal {

/// What a line has cost.
struct LineCounts {
  long points = 0;        ///< asked for
  long cold = 0;          ///< of these, solved cold
  long again = 0;         ///< solved cold after an anchor put them in doubt
  long anchors = 0;       ///< tests from many starts
  long events = 0;        ///< phases that came or went
  long newton_steps = 0;  ///< of points that were followed
  long evaluations = 0;   ///< of a phase with its Hessian, of the same
  long checks = 0;        ///< of a tracked minimum
  long skipped = 0;       ///< of these, far above the plane without looking

  LineCounts& operator+=(const LineCounts& other) noexcept;
};

/// Of points that are followed. Left out they are NaN: one costs as much as the Newton
/// steps of a point.
enum class ConditionNumbers { wanted, left_out };

class LineSolver {
 public:
  LineSolver(const PhaseSystem& system, const SolveOptions& options);
  LineSolver(const LineSolver&) = delete;
  LineSolver& operator=(const LineSolver&) = delete;

  /// One more point of the line: followed from the last, or cold.
  /// @return false when it is not usable; see report()
  bool next(Temperature t, std::span<const double> mole_fractions);
  /// Makes the last point an anchor. @return false when a phase that was not tracked
  /// lies below the plane: the points since the last anchor are in doubt
  bool certify();
  /// The next point is solved cold.
  void forget() noexcept { known_ = false; }
  /// Result of the last point, in memory that is used again. Minima far above the plane
  /// are brought up to date first, so that driving forces are those of this point;
  /// where one then lies below the plane the point is solved cold.
  void equilibrium(Equilibrium& result,
                   ConditionNumbers numbers = ConditionNumbers::wanted);

  const SolveReport& report() const noexcept { return report_; }
  const std::vector<PhaseSet>& sets() const noexcept { return sets_; }
  const std::vector<double>& potentials() const noexcept { return mu_; }
  /// True when the point is too far from the last to be followed.
  bool far(Temperature t, std::span<const double> mole_fractions) const noexcept;
  /// Length of the step from the last point, roughly in the unit of distance(): the
  /// potentials are not known yet, so the composition stands for them.
  double step_to(Temperature t, std::span<const double> mole_fractions) const noexcept;
  /// How far the tangent plane has come since the last anchor, in temperature and
  /// chemical potentials; 1 is far enough for the next.
  double distance() const noexcept { return distance_; }
  /// True when the last point was solved cold: those before it are then no nearer to an
  /// anchor than they were.
  bool is_cold() const noexcept { return is_cold_; }
  const LineCounts& counts() const noexcept { return counts_; }

 private:
  double log_distance(std::span<const double> x) const noexcept;
  double travelled(double kelvin_before) const noexcept;
  bool follow();
  bool refined(int most_steps);
  bool check_tracked();
  bool check_kinks();
  bool update(TrackedMinimum& minimum);
  bool add_lowest();
  void track_vanished();
  void drop_coincident();
  bool solve_cold(Temperature t, std::span<const double> mole_fractions);

  const PhaseSystem& system_;
  SolveOptions options_;
  MovingConditions moving_;
  Conditions& conditions_ = moving_.conditions();
  std::vector<PhaseSet> sets_, before_;  ///< before_: the last refinement
  std::vector<double> mu_, mu_before_;   ///< mu_before_: of the point before
  std::vector<TrackedMinimum> tracked_;
  DescentMemory memory_;
  ResumedDescent descent_;  ///< of minima that are brought up to date fully
  NewtonMemory newton_;
  Predictor predictor_;
  std::vector<double> normalized_;  ///< mole fractions of the point that is solved
  double energy_ = 0.0;             ///< of the last refinement [J/mol of atoms]
  SolveReport report_;
  Equilibrium cold_;  ///< of the last point, when it was solved cold
  bool is_cold_ = false;
  bool known_ = false;  ///< the last point can be followed
  double distance_ = 0.0;
  LineCounts counts_;
};

}  // namespace gibbsteel::internal

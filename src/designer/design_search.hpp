#pragma once
/// One descent from one start: by damped least squares where targets are to be met
/// exactly, then by sequential quadratic programming, a compromise then without slopes.

#include <vector>

#include "designer/design_problem.hpp"

namespace gibbsteel::internal {

/// The best point that was seen.
struct DesignPoint {
  std::vector<double> point;
  double misfit = Occurrence::kUnknown;
  double violation = Occurrence::kUnknown;

  bool usable() const noexcept { return misfit == misfit; }
  /// Less violation first; below kHolds it counts as none, and the misfit decides.
  bool better_than(const DesignPoint& other) const noexcept;
  static constexpr double kHolds = 1e-6;
};

enum class DesignAim {
  constrained,  ///< least squares of the equalities, inequalities as constraints;
                ///< without equalities: the distance from the start
  all_squares,  ///< violations of inequalities join the sum
};

/// @throws what a quantity throws
DesignPoint descend(DesignProblem& problem, const std::vector<double>& start,
                    DesignAim aim, int most_steps);

/// The point itself, without a descent.
DesignPoint point_of(DesignProblem& problem, const std::vector<double>& point);

}  // namespace gibbsteel::internal

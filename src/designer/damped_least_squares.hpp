#pragma once
/// Damped least squares within the bounds of a design: for targets that are to be met
/// exactly it needs few soaks. Levenberg, Quart. Appl. Math. 2 (1944) 164; Marquardt,
/// J. SIAM 11 (1963) 431 (from memory).

#include "designer/design_search.hpp"

namespace gibbsteel::internal {

/// Least sum of squares of the deviations from equalities and of the inequalities that
/// do not hold.
/// @param start  a point of the unit cube
/// @return the best point seen; not usable when `start` is not
DesignPoint damped_least_squares(DesignProblem& problem,
                                 const std::vector<double>& start, int most_steps);

}  // namespace gibbsteel::internal

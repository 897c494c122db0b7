#pragma once
/// The weight percents of a design rounded to what can be ordered.

#include <vector>

#include "designer/design_problem.hpp"

namespace gibbsteel::internal {

/// The nearest ones, or where these break a limit that `percents` keep, the best within
/// a few steps of them. No bound is crossed: what would cross it is not rounded.
/// @param start     whose other elements stay
/// @param percents  of the elements, in their order [wt%]
std::vector<double> rounded_design(DesignProblem& problem, const Steel& start,
                                   const std::vector<DesignElement>& elements,
                                   std::vector<double> percents,
                                   const MakeableSteps& steps);

}  // namespace gibbsteel::internal

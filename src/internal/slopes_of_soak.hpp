#pragma once
/// Slopes of a soak that is already solved.

#include "gibbsteel/sensitivities.hpp"
#include "internal/soak_problem.hpp"

namespace gibbsteel::internal {

/// @param result  of `problem`, usable or not
/// @param state   problem.state_of(result)
/// @throws InputError gibbsteel.input.216, .217, .218
std::vector<StateSlope> slopes_of_soak(const SoakProblem& problem,
                                       const Equilibrium& result, const State& state,
                                       const SensitivityOptions& chosen);

/// Refuses inputs that `problem` does not have, all in one go.
/// @throws InputError gibbsteel.input.216, .217, .218
void check_inputs(const SoakProblem& problem, const SensitivityOptions& chosen);

/// What shows the effect of an element that the steel holds none of.
std::string first_addition(const std::string& symbol);

}  // namespace gibbsteel::internal

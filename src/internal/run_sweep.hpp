#pragma once
/// The two ways of a sweep: followed along the line of temperatures, or with proofs.

#include <functional>

#include "gibbsteel/sweep.hpp"
#include "internal/soak_problem.hpp"

namespace gibbsteel::internal {

using SweepProgress = std::function<bool(std::size_t)>;

/// Each soak from the one before; see continuation/line_solver.hpp.
void follow_sweep(const SoakProblem& problem, std::span<const Temperature> temperatures,
                  const SweepProgress& progress, Sweep& sweep);

/// Every soak cold, every `prove_every`-th proven, those between covered.
void prove_sweep(const SoakProblem& problem, std::span<const Temperature> temperatures,
                 const SweepProgress& progress, Sweep& sweep);

}  // namespace gibbsteel::internal

#pragma once
/// The equilibria of one block of a screen.

#include <functional>
#include <memory>
#include <span>
#include <vector>

#include "continuation/line_solver.hpp"

namespace gibbsteel::internal {

/// A row that is ready for the minimizer.
struct RowProblem {
  std::size_t row = 0;  ///< within the whole screen
  /// Rows of one set of candidate elements share it, or have one that is like it.
  std::shared_ptr<const PhaseSystem> system;
  std::vector<double> mole_fractions;  ///< as system->elements()
  Temperature temperature = Temperature::kelvin(0.0);
};

/// Calls deliver(i, equilibrium of problems[i]) once for each of them, in any order.
/// The outcome may depend on the problems of the block, and on nothing else: blocks are
/// solved by any thread in any order. Every equilibrium carries its own certificate.
void solve_block(std::span<const RowProblem> problems, const SolveOptions& options,
                 const std::function<void(std::size_t, const Equilibrium&)>& deliver,
                 ConditionNumbers numbers = ConditionNumbers::wanted);

}  // namespace gibbsteel::internal

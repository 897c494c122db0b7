#include "screening/solve_block.hpp"

namespace gibbsteel::internal {

void solve_block(std::span<const RowProblem> problems, const SolveOptions& options,
                 const std::function<void(std::size_t, const Equilibrium&)>& deliver) {
  for (std::size_t i = 0; i < problems.size(); ++i) {
    const RowProblem& p = problems[i];
    deliver(i, minimize(*p.system, p.temperature, p.mole_fractions, options));
  }
}

}  // namespace gibbsteel::internal

#include "internal/run_sweep.hpp"

#include "continuation/solve_line.hpp"
#include "internal/sweep_cover.hpp"

namespace gibbsteel::internal {
namespace {

/// Adds a state. @return false when the sweep ends before its last temperature
bool add_state(State&& state, std::size_t asked, const SweepProgress& progress,
               Sweep& sweep) {
  sweep.states.push_back(std::move(state));
  const bool more = sweep.states.size() < asked;
  if (progress && !progress(sweep.states.size()) && more) sweep.cancelled = true;
  return !sweep.cancelled;
}

}  // namespace

void follow_sweep(const SoakProblem& problem, std::span<const Temperature> temperatures,
                  const SweepProgress& progress, Sweep& sweep) {
  sweep.states.reserve(temperatures.size());
  std::vector<LinePoint> points;
  points.reserve(temperatures.size());
  for (const Temperature t : temperatures)
    points.push_back({t, problem.mole_fractions});
  solve_line(problem.system, problem.options.solve, points,
             [&](std::size_t, Equilibrium&& result) {
               return add_state(problem.state_of(result), temperatures.size(), progress,
                                sweep);
             });
}

void prove_sweep(const SoakProblem& problem, std::span<const Temperature> temperatures,
                 const SweepProgress& progress, Sweep& sweep) {
  const auto every = static_cast<std::size_t>(problem.options.prove_every);
  for (const Temperature t : temperatures) {
    const bool anchor = is_anchor(sweep.states.size(), temperatures.size(), every);
    const Equilibrium result = anchor ? problem.solve(t) : problem.solve_unproven(t);
    if (!add_state(problem.state_of(result), temperatures.size(), progress, sweep))
      break;
  }
  if (every > 1) cover_sweep(problem, temperatures.size(), progress, sweep);
}

}  // namespace gibbsteel::internal

#include "internal/sweep_cover.hpp"

#include <algorithm>
#include <cmath>

#include "internal/number_format.hpp"
#include "proof/temperature_concavity.hpp"

namespace gibbsteel::internal {
namespace {

/// Wider gaps say too little [J/mol of atoms]: such a state is proven itself.
constexpr double kWidestGap = 5.0;

bool is_proven(const State& state) {
  return state.usable() && state.solve_report.certificate == Certificate::proof;
}

std::string neighbours(const State& before, const State& after) {
  return "covered by the proofs at " + fixed(before.temperature.in_celsius(), 1) +
         " and " + fixed(after.temperature.in_celsius(), 1) + " C";
}

/// By how much the energy of a state lies above the plane of its own potentials
/// [J/mol of atoms]: what its residuals leave open.
double above_its_plane(const SoakProblem& problem, const State& state) {
  double plane = 0.0, size = 0.0;
  for (std::size_t e = 0; e < problem.mole_fractions.size(); ++e) {
    const double mu = state.chemical_potential[problem.system.elements()[e]];
    plane += mu * problem.mole_fractions[e];
    size += std::abs(mu) * problem.mole_fractions[e];
  }
  return std::max(0.0, state.gibbs_energy - plane) + 1e-14 * size;
}

}  // namespace

bool cover(const SoakProblem& problem, const State& before, const State& after,
           State& between) {
  const double from = before.temperature.in_kelvin();
  const double to = after.temperature.in_kelvin();
  const double share = (between.temperature.in_kelvin() - from) / (to - from);
  if (!is_proven(before) || !is_proven(after) || !between.usable() ||
      !(share >= 0.0 && share <= 1.0) ||
      !concave_in_temperature(problem.system, from, to))
    return false;
  double wider = 0.0;
  for (const auto& [symbol, mu] : between.chemical_potential) {
    const double chord = (1.0 - share) * before.chemical_potential[symbol] +
                         share * after.chemical_potential[symbol];
    // The chord is known to a few units in the last place.
    wider = std::max(wider, mu - chord + 1e-15 * std::abs(mu));
  }
  const double gap =
      std::max(before.solve_report.proven_gap, after.solve_report.proven_gap);
  const double all = gap + wider + above_its_plane(problem, between);
  if (!(all <= kWidestGap)) return false;
  SolveReport& report = between.solve_report;
  report.certificate = Certificate::covered;
  report.proven_gap = all;
  report.proof = neighbours(before, after);
  report.reason = "converged; proven by concavity between two proven temperatures";
  return true;
}

void cover_sweep(const SoakProblem& problem, std::size_t asked,
                 const SweepProgress& progress, Sweep& sweep) {
  std::vector<State>& states = sweep.states;
  bool stop = false;
  const auto every = static_cast<std::size_t>(problem.options.prove_every);
  for (std::size_t i = 0; i < states.size(); ++i) {
    if (is_anchor(i, asked, every)) continue;
    const std::size_t before = i - i % every;
    const std::size_t after = std::min(before + every, asked - 1);
    if (after >= states.size()) {
      states[i].solve_report.proof =
          "not proven: the sweep stopped before the next proof";
      continue;
    }
    if (cover(problem, states[before], states[after], states[i])) continue;
    sweep.cancelled = sweep.cancelled || stop;
    if (sweep.cancelled) {
      states[i].solve_report.proof = "not proven: the sweep was cancelled";
      continue;
    }
    states[i] = problem.state_of(problem.solve(states[i].temperature));
    stop = progress && !progress(states.size());
  }
}

}  // namespace gibbsteel::internal

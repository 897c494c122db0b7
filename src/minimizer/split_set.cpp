#include "minimizer/split_set.hpp"

#include <algorithm>
#include <array>

namespace gibbsteel::internal {
namespace {

struct Exchange {
  std::size_t from = 0, to = 0;
  double size = 0.0;       ///< moved from one constituent to the other
  double curvature = 0.0;  ///< D(+) + D(-) - 2 D
};

std::vector<double> exchanged(std::vector<double> y, const Exchange& e, double sign) {
  y[e.from] -= sign * e.size;
  y[e.to] += sign * e.size;
  return y;
}

/// The exchange within a sublattice along which G curves down most. The plane has no
/// curvature, so that G stands for D.
Exchange steepest_exchange(const Candidate& candidate, const std::vector<double>& y) {
  const CompiledPhase& phase = *candidate.phase;
  const double here = gibbs_energy(phase, candidate.at, y.data());
  Exchange best;
  for (std::size_t i = 0; i < y.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) {
      if (phase.constituents[i].sublattice != phase.constituents[j].sublattice)
        continue;
      Exchange e{i, j, std::min(0.01, 0.3 * std::min(y[i], y[j])), 0.0};
      e.curvature = gibbs_energy(phase, candidate.at, exchanged(y, e, 1.0).data()) +
                    gibbs_energy(phase, candidate.at, exchanged(y, e, -1.0).data()) -
                    2.0 * here;
      if (e.curvature < best.curvature) best = e;
    }
  return best;
}

}  // namespace

bool split_set(ColumnGeneration& generation, std::span<const double> mu,
               std::size_t index, std::vector<PhaseSet>& sets) {
  PhaseSet& set = sets[index];
  Conditions& conditions = generation.conditions();
  const Candidate& candidate = conditions.phases[set.phase];
  const Exchange exchange = steepest_exchange(candidate, set.y);
  if (!(exchange.curvature < 0.0)) return false;
  auto one = exchanged(set.y, exchange, 1.0);
  auto other = exchanged(set.y, exchange, -1.0);
  const DescentLimits limits{400, 1e-13};
  descend(conditions, candidate, mu, limits, generation.memory(), one.data());
  descend(conditions, candidate, mu, limits, generation.memory(), other.data());
  if (distance(one, other) < 2.0 * kMergeDistance) return false;
  set.amount *= 0.5;
  PhaseSet second;
  second.phase = set.phase;
  second.amount = set.amount;
  second.y = std::move(other);
  set.y = std::move(one);
  sets.push_back(std::move(second));
  return true;
}

}  // namespace gibbsteel::internal

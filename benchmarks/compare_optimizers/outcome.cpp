#include "outcome.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "posing.hpp"

namespace gibbsteel::contest {

Outcome judge(const Task& task, const Answer& answer) {
  Outcome outcome;
  outcome.iterations = answer.iterations;
  outcome.said = answer.said;
  outcome.gap = outcome.balance = std::numeric_limits<double>::quiet_NaN();
  if (answer.sets.empty()) return outcome;
  const auto conditions = conditions_of(task);
  std::vector<double> sum(conditions.elements());
  double energy = 0.0;
  for (const PhasePoint& set : answer.sets) {
    const auto& candidate = conditions.phases[set.phase];
    std::vector<double> y = set.y;
    normalize_fractions(*candidate.phase, y);
    energy +=
        set.amount * internal::gibbs_energy(*candidate.phase, candidate.at, y.data());
    internal::add_atoms(*candidate.phase, y.data(), set.amount, sum.data());
  }
  outcome.balance = 0.0;
  for (std::size_t e = 0; e < sum.size(); ++e) {
    energy -= task.reference.chemical_potential[e] * sum[e];
    const double error = std::abs(sum[e] - conditions.overall[e]);
    outcome.balance = std::isnan(error) ? error : std::max(outcome.balance, error);
  }
  outcome.gap = energy;
  return outcome;
}

}  // namespace gibbsteel::contest

#include "balanced_start.hpp"

#include <algorithm>

#include "posing.hpp"

namespace gibbsteel::contest {

Sets balanced(const Task& task, Sets sets) {
  constexpr double kShare = 0.5;
  const auto conditions = conditions_of(task);
  std::vector<double> held(conditions.elements());
  for (std::size_t s = 1; s < sets.size(); ++s)
    internal::add_atoms(*conditions.phases[sets[s].phase].phase, sets[s].y.data(),
                        sets[s].amount, held.data());
  double factor = 1.0;
  for (std::size_t e = 0; e < held.size(); ++e)
    if (held[e] > 0.0)
      factor = std::min(factor, kShare * conditions.overall[e] / held[e]);
  for (PhasePoint& set : sets) set.amount *= factor;
  PhasePoint& rest = sets.front();
  const internal::CompiledPhase& austenite = *conditions.phases[rest.phase].phase;
  rest.amount = 0.0;  // metal atoms, one site per formula unit
  std::size_t vacancy = 0;
  for (std::size_t i = 0; i < rest.y.size(); ++i) {
    const Constituent& constituent = austenite.constituents[i];
    if (constituent.element < 0) {
      vacancy = i;
      continue;
    }
    const auto e = static_cast<std::size_t>(constituent.element);
    rest.y[i] = conditions.overall[e] - factor * held[e];
    if (constituent.sublattice == 0) rest.amount += rest.y[i];
  }
  rest.y[vacancy] = rest.amount;
  for (std::size_t i = 0; i < rest.y.size(); ++i)
    if (i != vacancy && austenite.constituents[i].sublattice != 0)
      rest.y[vacancy] -= rest.y[i];
  for (double& y : rest.y) y /= rest.amount;
  return sets;
}

}  // namespace gibbsteel::contest

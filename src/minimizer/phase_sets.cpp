#include "minimizer/phase_sets.hpp"

namespace gibbsteel::internal {

void merge_close_sets(std::vector<PhaseSet>& sets, double closest) {
  for (std::size_t i = 0; i < sets.size(); ++i)
    for (std::size_t j = i + 1; j < sets.size();) {
      if (sets[i].phase != sets[j].phase || distance(sets[i].y, sets[j].y) > closest) {
        ++j;
        continue;
      }
      const double sum = sets[i].amount + sets[j].amount;
      const double share = sum > 0.0 ? sets[j].amount / sum : 0.5;
      for (std::size_t k = 0; k < sets[i].y.size(); ++k)
        sets[i].y[k] += share * (sets[j].y[k] - sets[i].y[k]);
      sets[i].amount = sum;
      sets.erase(sets.begin() + static_cast<std::ptrdiff_t>(j));
    }
}

std::vector<PhaseSet> sets_from_basis(ColumnGeneration& generation) {
  constexpr double kNegligible = 1e-13;  // moles of atoms
  std::vector<PhaseSet> sets;
  for (const auto& [column, amount] : generation.program().basis()) {
    if (amount < kNegligible) continue;
    PhaseSet set;
    set.phase = generation.pool().phase(column);
    const auto y = generation.pool().y(column);
    set.y.assign(y.begin(), y.end());
    const auto minimum = generation.descend_from(set.phase, set.y.data(), {});
    set.amount = amount / minimum.atoms;
    sets.push_back(std::move(set));
  }
  merge_close_sets(sets, kClusterDistance);
  return sets;
}

}  // namespace gibbsteel::internal

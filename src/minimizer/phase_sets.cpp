#include "minimizer/phase_sets.hpp"

#include <algorithm>

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

double first_amount(const Conditions& conditions, std::size_t phase, const double* y) {
  constexpr double kAtoms = 1e-3;  // most atoms in it
  constexpr double kShare = 0.1;   // and most of any element's atoms
  const CompiledPhase& compiled = *conditions.phases[phase].phase;
  std::vector<double> formula(conditions.elements(), 0.0);
  add_atoms(compiled, y, 1.0, formula.data());
  double amount = kAtoms / atoms(compiled, y);
  for (std::size_t e = 0; e < formula.size(); ++e)
    if (formula[e] > 0.0)
      amount = std::min(amount, kShare * conditions.overall[e] / formula[e]);
  return amount;
}

namespace {

/// True for a column that holds next to nothing of every element.
bool is_negligible(const Conditions& conditions, const double* composition,
                   double amount) {
  constexpr double kShare = 1e-9;
  for (std::size_t e = 0; e < conditions.elements(); ++e)
    if (amount * composition[e] > kShare * conditions.overall[e]) return false;
  return true;
}

/// Moves each set to the minimum at the potentials of the program; amounts [mol of
/// atoms] become mol of formula units.
void descend_sets(ColumnGeneration& generation, std::vector<PhaseSet>& sets) {
  Conditions& conditions = generation.conditions();
  std::vector<DescentJob> jobs;
  std::vector<PhaseSet*> of_job;
  for (std::size_t f = 0; f < conditions.phases.size(); ++f) {
    jobs.clear();
    of_job.clear();
    for (PhaseSet& set : sets)
      if (set.phase == f) {
        jobs.emplace_back().y = set.y.data();
        of_job.push_back(&set);
      }
    if (jobs.empty()) continue;
    descend(conditions, conditions.phases[f], generation.program().potentials(), {},
            generation.memory(), jobs);
    for (std::size_t k = 0; k < jobs.size(); ++k)
      of_job[k]->amount /= jobs[k].result.atoms;
  }
}

}  // namespace

std::vector<PhaseSet> sets_from_basis(ColumnGeneration& generation) {
  const Conditions& conditions = generation.conditions();
  std::vector<PhaseSet> sets;
  for (const auto& [column, amount] : generation.program().basis()) {
    if (is_negligible(conditions, generation.pool().composition(column), amount))
      continue;
    PhaseSet set;
    set.phase = generation.pool().phase(column);
    const auto y = generation.pool().y(column);
    set.y.assign(y.begin(), y.end());
    set.amount = amount;
    sets.push_back(std::move(set));
  }
  descend_sets(generation, sets);
  merge_close_sets(sets, kClusterDistance);
  return sets;
}

}  // namespace gibbsteel::internal

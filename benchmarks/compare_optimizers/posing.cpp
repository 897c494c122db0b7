#include "posing.hpp"

namespace gibbsteel::contest {

internal::Conditions conditions_of(const Task& task) {
  return internal::conditions_of(*task.system, task.temperature, task.mole_fractions);
}

void normalize_fractions(const internal::CompiledPhase& phase, std::vector<double>& y) {
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    double sum = 0.0;
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) {
      if (y[i] < 0.0) y[i] = 0.0;
      sum += y[i];
    }
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) y[i] /= sum;
  }
}

Posing::Posing(const Task& task, const Sets& start)
    : conditions_(conditions_of(task)), start_(start) {
  for (const PhasePoint& set : start) {
    const internal::CompiledPhase& phase = *conditions_.phases[set.phase].phase;
    Slot slot;
    slot.phase = set.phase;
    slot.first = variables_;
    for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
      if (phase.first[s + 1] - phase.first[s] < 2) continue;
      slot.groups.push_back(slot.free.size());
      for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i)
        slot.free.push_back(i);
    }
    slot.groups.push_back(slot.free.size());
    variables_ += 1 + slot.free.size();
    slots_.push_back(std::move(slot));
  }
}

std::vector<double> Posing::fixed_atoms(const Slot& slot) const {
  const internal::CompiledPhase& phase = *candidate(slot).phase;
  std::vector<double> y(phase.size(), 1.0), atoms(conditions_.elements());
  for (const std::size_t i : slot.free) y[i] = 0.0;
  internal::add_atoms(phase, y.data(), 1.0, atoms.data());
  return atoms;
}

}  // namespace gibbsteel::contest

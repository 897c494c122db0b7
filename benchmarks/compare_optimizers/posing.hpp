#pragma once
/// What both ways of posing the task share: the phases at the temperature, which
/// site fractions are free, and where they stand among the variables.

#include "minimizer/conditions.hpp"
#include "task.hpp"

namespace gibbsteel::contest {

/// All phases of the task with their coefficients at its temperature.
internal::Conditions conditions_of(const Task& task);

/// Divides every sublattice by its sum; negative site fractions become 0.
void normalize_fractions(const internal::CompiledPhase& phase, std::vector<double>& y);

/// One set among the variables: its amount first, then its free site fractions.
/// Constituents that are alone on their sublattice are fixed at 1 and not variables.
struct Slot {
  std::size_t phase = 0;
  std::size_t first = 0;          ///< variable of the amount
  std::vector<std::size_t> free;  ///< constituents, variables first + 1, ...
  /// First position in `free` of each sublattice with several constituents, then the
  /// number of free constituents.
  std::vector<std::size_t> groups;
};

class Posing {
 public:
  Posing(const Task& task, const Sets& start);

  std::size_t variables() const noexcept { return variables_; }
  const std::vector<Slot>& slots() const noexcept { return slots_; }
  const internal::Conditions& conditions() const noexcept { return conditions_; }
  const internal::Candidate& candidate(const Slot& slot) const noexcept {
    return conditions_.phases[slot.phase];
  }
  /// Element of a constituent, -1 for a vacancy.
  int element(const Slot& slot, std::size_t constituent) const noexcept {
    return candidate(slot).phase->constituents[constituent].element;
  }
  double sites(const Slot& slot, std::size_t constituent) const noexcept {
    return candidate(slot).phase->sites[constituent];
  }
  /// Atoms per formula unit on sublattices with one constituent, per element.
  std::vector<double> fixed_atoms(const Slot& slot) const;

 protected:
  internal::Conditions conditions_;
  std::vector<Slot> slots_;
  std::size_t variables_ = 0;
  Sets start_;
};

}  // namespace gibbsteel::contest

#pragma once
/// Cold start: the linear program over all columns so far, and new columns at the
/// minima of D that lie below its plane, until none lies far below (dual cutting
/// planes).

#include "minimizer/linear_program.hpp"
#include "minimizer/phase_minimum.hpp"

namespace gibbsteel::internal {

class ColumnGeneration {
 public:
  /// Starts with the seeds of every phase.
  explicit ColumnGeneration(Conditions& conditions);

  /// Repeats program and pricing until no minimum lies lower than `depth` below the
  /// plane [J/mol of atoms] or `rounds` are used up. @return false when the program
  /// failed
  bool run(double depth, int rounds);

  const LinearProgram& program() const noexcept { return program_; }
  ColumnPool& pool() noexcept { return pool_; }
  DescentMemory& memory() noexcept { return memory_; }
  Conditions& conditions() noexcept { return conditions_; }

  /// Short descents at `mu` from the lowest columns of a phase, kept in `starts`.
  std::span<DescentJob> price(std::size_t phase, std::span<const double> mu,
                              DescentStarts& starts);

 private:
  /// Adds what lies below the plane of the program. @return the lowest D
  double add_columns(std::size_t phase);

  Conditions& conditions_;
  ColumnPool pool_;
  LinearProgram program_;
  DescentMemory memory_;
};

/// False for a phase whose site fractions are all fixed.
inline bool has_freedom(const CompiledPhase& phase) noexcept {
  return phase.size() > phase.sublattice_count();
}

}  // namespace gibbsteel::internal

#include "minimizer/column_pool.hpp"

#include <algorithm>
#include <cmath>

#include "lanes/lane_kernels.hpp"

namespace gibbsteel::internal {

std::size_t ColumnPool::add(const Conditions& conditions, std::size_t phase,
                            const double* y, double energy) {
  const CompiledPhase& compiled = *conditions.phases[phase].phase;
  const double count = internal::atoms(compiled, y);
  composition_.resize(composition_.size() + elements_, 0.0);
  add_atoms(compiled, y, 1.0 / count, &composition_[composition_.size() - elements_]);
  energy_.push_back(energy / count);
  blocks_.add(&composition_[composition_.size() - elements_], energy / count);
  atoms_.push_back(count);
  if (of_phase_.size() <= phase) of_phase_.resize(phase + 1);
  of_phase_[phase].push_back(phase_.size());
  phase_.push_back(phase);
  y_.insert(y_.end(), y, y + compiled.size());
  offset_.push_back(y_.size());
  return phase_.size() - 1;
}

bool ColumnPool::finite_energies() const noexcept {
  return std::all_of(energy_.begin(), energy_.end(),
                     [](double energy) { return std::isfinite(energy); });
}

std::span<const double> ColumnPool::distances(std::span<const double> mu,
                                              AlignedNumbers& memory) const {
  memory.reserve(blocks_.count() * ColumnBlocks::kColumns);
  lane_kernels().column_distances(blocks_, mu.data(), memory.data());
  return {memory.data(), size()};
}

}  // namespace gibbsteel::internal

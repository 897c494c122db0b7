#include "minimizer/column_pool.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {

std::size_t ColumnPool::add(const Conditions& conditions, std::size_t phase,
                            const double* y, double energy) {
  const CompiledPhase& compiled = *conditions.phases[phase].phase;
  const double count = internal::atoms(compiled, y);
  composition_.resize(composition_.size() + elements_, 0.0);
  add_atoms(compiled, y, 1.0 / count, &composition_[composition_.size() - elements_]);
  energy_.push_back(energy / count);
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

double ColumnPool::d(std::size_t column, std::span<const double> mu) const noexcept {
  const double* x = composition(column);
  double even = energy_[column], odd = 0.0;
  std::size_t e = 0;
  for (; e + 1 < elements_; e += 2) {
    even -= mu[e] * x[e];
    odd -= mu[e + 1] * x[e + 1];
  }
  if (e < elements_) even -= mu[e] * x[e];
  return even + odd;
}

}  // namespace gibbsteel::internal

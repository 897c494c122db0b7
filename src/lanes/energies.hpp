#pragma once
/// Gibbs energies of many compositions of one phase, a lane each.

#include <algorithm>

#include "internal/polynomial_kernel.hpp"
#include "lanes/energies_task.hpp"
#include "lanes/phase_energy.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

template <class Real>
void energies(const EnergiesTask& task) noexcept {
  constexpr std::size_t kLanes = LaneTraits<Real>::kCount;
  const std::size_t n = task.phase->size();
  Real y[kMaxConstituents];
  for (std::size_t k = 0; k < task.count; k += kLanes) {
    const std::size_t last = task.count - 1;
    for (std::size_t l = 0; l < kLanes; ++l) {
      const double* from = task.y + std::min(k + l, last) * n;
      for (std::size_t i = 0; i < n; ++i) set_lane(y[i], l, from[i]);
    }
    const Real energy = energy_value(*task.phase, *task.at, task.rt, y);
    for (std::size_t l = 0; l < kLanes && k + l < task.count; ++l)
      task.energy[k + l] = lane(energy, l);
  }
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE

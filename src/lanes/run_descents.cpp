#include "lanes/run_descents.hpp"

#include <algorithm>

#include "internal/polynomial_kernel.hpp"

namespace gibbsteel::internal {

void DescentMemory::reserve(std::size_t constituents, std::size_t lanes) {
  numbers_.reserve(lanes * descent_room(constituents, kMaxSublattices));
}

void run_descents(DescentTask& task, DescentMemory& memory, std::size_t most_lanes) {
  const std::size_t most = std::min(most_lanes, widest_lanes());
  std::size_t lanes = 1;
  while (2 * lanes <= most && lanes < task.count) lanes *= 2;
  memory.reserve(task.phase->size(), lanes);
  task.memory = memory.data();
  lane_kernels(lanes).descend(task);
}

}  // namespace gibbsteel::internal

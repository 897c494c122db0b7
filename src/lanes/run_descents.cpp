#include "lanes/run_descents.hpp"

#include <algorithm>

#include "internal/polynomial_kernel.hpp"

namespace gibbsteel::internal {

std::size_t widest_lanes() noexcept {
#ifdef GIBBSTEEL_WIDE_LANES
  static const std::size_t widest =
      __builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq") ? 8
      : __builtin_cpu_supports("avx2")                                        ? 4
                                                                              : 2;
  return widest;
#else
  return 2;
#endif
}

void DescentMemory::reserve(std::size_t constituents, std::size_t lanes) {
  const std::size_t numbers = lanes * descent_room(constituents, kMaxSublattices);
  const std::size_t chunks = (numbers + 7) / 8;
  if (chunks_.size() < chunks) chunks_.resize(chunks);
}

void run_descents(DescentTask& task, DescentMemory& memory, std::size_t most_lanes) {
  const std::size_t most = std::min(most_lanes, widest_lanes());
  std::size_t lanes = 1;
  while (2 * lanes <= most && lanes < task.count) lanes *= 2;
  memory.reserve(task.phase->size(), lanes);
  task.memory = memory.data();
  if (lanes == 1) return descend_one(task);
#ifdef GIBBSTEEL_WIDE_LANES
  if (lanes == 8) return descend_eight(task);
  if (lanes == 4) return descend_four(task);
#endif
  descend_two(task);
}

}  // namespace gibbsteel::internal

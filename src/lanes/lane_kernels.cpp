#include "lanes/lane_kernels.hpp"

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

const LaneKernels& lane_kernels(std::size_t lanes) noexcept {
#ifdef GIBBSTEEL_WIDE_LANES
  if (lanes == 8) return kEightLanes;
  if (lanes == 4) return kFourLanes;
#endif
  return lanes == 2 ? kTwoLanes : kOneLane;
}

}  // namespace gibbsteel::internal

#include "lanes/lane_kernels.hpp"

#ifdef GIBBSTEEL_WIDE_LANES
#include <immintrin.h>
#endif

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>

#ifdef GIBBSTEEL_WIDE_LANES
#define GIBBSTEEL_LANE_NAMESPACE four
#define GIBBSTEEL_LANE_COUNT 4
#define GIBBSTEEL_LANE_ROOT(x) _mm256_sqrt_pd(x)
#define GIBBSTEEL_LANE_ANY(mask) _mm256_movemask_pd(__builtin_bit_cast(__m256d, mask))
// All that is shared comes before the target: it stays as it is for every machine.
#include "gibbsteel/units.hpp"
#include "internal/compiled_phase.hpp"

#ifdef __clang__
#pragma clang attribute push(__attribute__((target("avx2"))), apply_to = function)
#else
#pragma GCC push_options
#pragma GCC target("avx2")
#endif

#include "lanes/kernels_of.hpp"

namespace gibbsteel::internal {

constinit const LaneKernels kFourLanes = four::kernels_of<four::Lanes>();

}  // namespace gibbsteel::internal

#ifdef __clang__
#pragma clang attribute pop
#else
#pragma GCC pop_options
#endif
#endif

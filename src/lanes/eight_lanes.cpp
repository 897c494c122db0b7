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
#define GIBBSTEEL_LANE_NAMESPACE eight
#define GIBBSTEEL_LANE_COUNT 8
#define GIBBSTEEL_LANE_ROOT(x) _mm512_maskz_sqrt_pd(0xff, x)
#define GIBBSTEEL_LANE_ANY(mask) _mm512_movepi64_mask(__builtin_bit_cast(__m512i, mask))
// All that is shared comes before the target: it stays as it is for every machine.
#include "gibbsteel/units.hpp"
#include "internal/compiled_phase.hpp"

#ifdef __clang__
#pragma clang attribute push(__attribute__((target("avx512f,avx512dq"))), \
                             apply_to = function)
#else
#pragma GCC push_options
#pragma GCC target("avx512f,avx512dq")
#endif

#include "lanes/kernels_of.hpp"

namespace gibbsteel::internal {

constinit const LaneKernels kEightLanes = eight::kernels_of<eight::Lanes>();

}  // namespace gibbsteel::internal

#ifdef __clang__
#pragma clang attribute pop
#else
#pragma GCC pop_options
#endif
#endif

#include "lanes/lane_kernels.hpp"

#define GIBBSTEEL_LANE_NAMESPACE two
#define GIBBSTEEL_LANE_COUNT 2
#ifdef __SSE2__
#include <emmintrin.h>
#define GIBBSTEEL_LANE_ROOT(x) _mm_sqrt_pd(x)
#define GIBBSTEEL_LANE_ANY(mask) _mm_movemask_pd(__builtin_bit_cast(__m128d, mask))
#endif
#include "lanes/kernels_of.hpp"

namespace gibbsteel::internal {

constinit const LaneKernels kTwoLanes = two::kernels_of<two::Lanes>();

}  // namespace gibbsteel::internal

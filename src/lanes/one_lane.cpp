#include "lanes/kernels_of.hpp"

namespace gibbsteel::internal {

constinit const LaneKernels kOneLane = one::kernels_of<double>();

}  // namespace gibbsteel::internal

#pragma once
/// How far to step along a slope for a difference.

#include "gibbsteel/state_slope.hpp"

namespace gibbsteel::internal {

/// A step that changes amounts, compositions, volumes, carbon activity and temperature
/// by up to this share: 1e-5 is half way, in digits, between curvature and rounding. 0
/// when the slope changes none of them.
double small_step(const State& state, const StateSlope& slope, double relative);

}  // namespace gibbsteel::internal

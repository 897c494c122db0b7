#pragma once
/// Spheres of one size that dissolve: Eq. (B7) of timed_soak.hpp.

#include <functional>
#include <vector>

namespace gibbsteel::internal {

/// -r dr/dt [m2/s] at a share that is left: 0 where nothing dissolves, infinite where
/// it takes no time, NaN where it is not known.
using DissolvingSpeed = std::function<double(double share)>;

/// Shares that are left after these times; the speed must fall as less is left.
/// Everything that takes no time has gone at time 0.
/// @param start    share before, above 0
/// @param radius   of the spheres before [m]
/// @param seconds  each at least 0, rising
/// @return one per time; NaN when a speed is not known
std::vector<double> shares_left(const DissolvingSpeed& speed, double start,
                                double radius, const std::vector<double>& seconds);

}  // namespace gibbsteel::internal

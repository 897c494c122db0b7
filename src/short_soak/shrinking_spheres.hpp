#pragma once
/// Spheres of one size that dissolve: Eq. (B7) of timed_soak.hpp.

#include <functional>
#include <optional>
#include <vector>

namespace gibbsteel::internal {

/// What a share that is left does.
enum class Dissolving { not_at_all, slowly, at_once, unknown };

/// How fast spheres dissolve.
struct DissolvingSpeed {
  /// -r dr/dt [m2/s] where it is slow.
  std::function<double(double share)> at;
  std::function<Dissolving(double share)> regime;
};

/// Shares that are left after these times; the speed must fall as less is left.
/// Everything that takes no time has gone at time 0.
/// @param start    share before, above 0
/// @param radius   of the spheres before [m]
/// @param seconds  each at least 0, rising
/// @return one per time; NaN when a speed is not known
std::vector<double> shares_left(const DissolvingSpeed& speed, double start,
                                double radius, const std::vector<double>& seconds);

/// Seconds until a share is left: 0 where that takes no time, nothing where it is never
/// reached; NaN when a speed is not known.
std::optional<double> seconds_to(const DissolvingSpeed& speed, double start,
                                 double radius, double share);

}  // namespace gibbsteel::internal

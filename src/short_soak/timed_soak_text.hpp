#pragma once
/// What the state of a timed soak says of itself.

#include "gibbsteel/timed_soak.hpp"
#include "short_soak/short_soak_start.hpp"

namespace gibbsteel::internal {

/// Status, reason and warning 360.
/// @param metals_moved  further than carbon alone gets
ShortSoakKind timed_soak_kind(const ShortSoak& soak, const SoakTime& time,
                              bool metals_moved);

}  // namespace gibbsteel::internal

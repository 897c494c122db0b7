#pragma once
/// What the state of a timed soak says of itself.

#include "gibbsteel/timed_soak.hpp"
#include "short_soak/short_soak_start.hpp"

namespace gibbsteel::internal {

struct TimedSoakFacts {
  bool metals_moved = false;  ///< further than carbon alone gets
  std::string beyond = {};    ///< why it is unlike any steel compared with, or empty
  bool none_hotter = false;   ///< no hotter annealing for the upper end of the band
};

/// What sets a soak apart from those of bearing and oil-hardening steels that timed
/// soaks were compared with; empty when nothing does.
std::string beyond_compared(const State& long_hold, const ShortSoak& soak);

/// Status, reason and warning 360.
ShortSoakKind timed_soak_kind(const ShortSoak& soak, const SoakTime& time,
                              const TimedSoakFacts& facts);

}  // namespace gibbsteel::internal

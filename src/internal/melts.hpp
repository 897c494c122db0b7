#pragma once
/// Whether what happens at a temperature happens in the melt.

#include "gibbsteel/phase_changes.hpp"

namespace gibbsteel::internal {

/// True when liquid is there at that temperature, or from it on.
bool melts(const PhaseChanges& changes, Temperature t);

}  // namespace gibbsteel::internal

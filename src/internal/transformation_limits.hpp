#pragma once
/// Ae1, Ae3 and Acm from the fields of a search.

#include "gibbsteel/phase_changes.hpp"

namespace gibbsteel::internal {

/// Fills ae1, ae3 and acm.
void find_limits(PhaseChanges& changes);

}  // namespace gibbsteel::internal

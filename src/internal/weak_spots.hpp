#pragma once
/// Where the shipped parameter file is known to be off, or has not been tried.

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/state.hpp"

namespace gibbsteel::internal {

/// Appends gibbsteel.warning.310, once per weak spot that the state touches, and .358
/// when no published record has that much vanadium. Only for
/// sets whose lowest layer is the shipped file: of other files nothing is known.
/// @param state  usable, complete but for its warnings
void check_weak_spots(const ParameterSet& set, const State& state,
                      std::vector<Warning>& out);

}  // namespace gibbsteel::internal

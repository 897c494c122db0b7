#pragma once
/// Quantities that are about a soak of minutes: why one has no value, and with which
/// parameter set it anneals.

#include <string>

#include "gibbsteel/quantity.hpp"

namespace gibbsteel::internal {

/// What the soak alone would be refused with: place, reason and remedy. Empty for other
/// quantities, where there is a value, and where the state is not usable.
std::string why_no_short_soak(const Quantity& quantity, const State& state);

/// The quantity, with this parameter set where it was given none, and with slopes to
/// numbers of the file; others as they are.
Quantity of_steel(const Quantity& quantity, const SharedParameters& set);
/// The same, whatever set it was given: for states of sets that were drawn.
Quantity of_set(const Quantity& quantity, const SharedParameters& set);

}  // namespace gibbsteel::internal

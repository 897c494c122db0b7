#pragma once
/// Why a quantity that is about a soak of minutes has no value.

#include <string>

#include "gibbsteel/quantity.hpp"

namespace gibbsteel::internal {

/// What the soak alone would be refused with: place, reason and remedy. Empty for other
/// quantities, where there is a value, and where the state is not usable.
std::string why_no_short_soak(const Quantity& quantity, const State& state);

}  // namespace gibbsteel::internal

#pragma once
/// One estimate from those of several families of steels, Eq. (H29).

#include <vector>

#include "gibbsteel/hardening.hpp"

namespace gibbsteel::internal {

/// Mean by share; the band holds those of the families and how far they lie apart.
/// Texts are those of the first, and say what was mixed.
/// @param ones    one per share, in its order
/// @param shares  by key of the family
Estimate mixed_estimate(const std::vector<HardeningEstimates>& ones,
                        Estimate HardeningEstimates::*estimate,
                        const NamedValues& shares);

}  // namespace gibbsteel::internal

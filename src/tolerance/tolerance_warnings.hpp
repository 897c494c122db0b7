#pragma once
/// What a user should know about a tolerance band: codes 350 to 354.

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/tolerance_band.hpp"

namespace gibbsteel::internal {

std::vector<Warning> tolerance_warnings(const ParameterSet& set,
                                        const ToleranceBand& band);

}  // namespace gibbsteel::internal

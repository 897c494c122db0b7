#pragma once
/// What with_measured_carbide() refuses before it calculates.

#include <string>
#include <vector>

#include "gibbsteel/measured_carbide.hpp"

namespace gibbsteel::internal {

/// @throws InputError gibbsteel.input.266: the hash is not that of the state
void check_same_set(const State& state, const std::string& parameters_hash);

/// @throws InputError gibbsteel.input.205, .260, .262, .266
void check_measured(const State& state, const std::vector<MeasuredCarbide>& measured,
                    const std::string& parameters_hash);

}  // namespace gibbsteel::internal

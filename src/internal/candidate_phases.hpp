#pragma once
/// Which phase models a soak may use.

#include <string>
#include <vector>

#include "gibbsteel/steel.hpp"

namespace gibbsteel::internal {

/// Names of the phase models left after restricting and suppressing.
/// @throws InputError gibbsteel.input.205 (no such phase), .212 (one of two kinds of
/// one
///         model suppressed)
std::vector<std::string> candidate_phases(const ParameterSet& set,
                                          const SoakOptions& options);

}  // namespace gibbsteel::internal

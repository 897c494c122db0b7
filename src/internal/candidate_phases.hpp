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

/// These phase models by all of their kinds, as soaks have them suppressed.
std::vector<std::string> all_kinds(const ParameterSet& set,
                                   const std::vector<std::string>& models);

}  // namespace gibbsteel::internal

#pragma once
/// What to know about hardening estimates: codes 330 to 335, and the warnings of the
/// state that matter to them.

#include "gibbsteel/hardening.hpp"

namespace gibbsteel::internal {

/// Appends to result.warnings.
/// @param by_mass  mass fractions stand for volume fractions
void check_hardening(const State& state, bool by_mass, HardeningEstimates& result);

}  // namespace gibbsteel::internal

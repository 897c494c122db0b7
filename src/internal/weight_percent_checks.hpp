#pragma once
/// Weight percents by symbol, whatever they are used for.

#include <vector>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/named_values.hpp"

namespace gibbsteel::internal {

/// Adds gibbsteel.input.201 (symbol), or of its number .202 (not finite), .203
/// (negative), .204 (above 100): as many as there are.
void check_weight_percents(const NamedValues& given, std::vector<Problem>& problems);

}  // namespace gibbsteel::internal

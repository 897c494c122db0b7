#pragma once
/// What a reader of a short soak must know besides the warnings of the long one.

#include <vector>

#include "gibbsteel/measured_carbide.hpp"

namespace gibbsteel::internal {

/// Codes 345 to 348, from `measured` and `carbides` of the result.
std::vector<Warning> measured_warnings(const ShortSoak& result);

}  // namespace gibbsteel::internal

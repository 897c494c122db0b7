#pragma once
/// What several steels leave out of the calculation, told once.

#include "gibbsteel/mill_analysis.hpp"
#include "gibbsteel/warnings.hpp"

namespace gibbsteel::internal {

/// gibbsteel.warning.307 of several steels: the most of each element that is left out.
/// @pre at least one of them leaves out something
Warning folded_traces(const std::vector<const MillAnalysis*>& analyses);

}  // namespace gibbsteel::internal

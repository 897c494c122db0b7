#pragma once
/// A steel without carbon, which is seldom meant.

#include <initializer_list>
#include <optional>
#include <string_view>
#include <vector>

#include "gibbsteel/mill_analysis.hpp"
#include "gibbsteel/warnings.hpp"

namespace gibbsteel::internal {

/// gibbsteel.warning.319, of an alloy whose certificate has no carbon, or 0 of it; not
/// of iron alone.
std::optional<Warning> missing_carbon(const MillAnalysis& analysis);

/// Takes it out where one of the swept variables is carbon: 0 of it is meant there.
void forget_swept_carbon(std::initializer_list<std::string_view> swept,
                         std::vector<Warning>& warnings);

}  // namespace gibbsteel::internal

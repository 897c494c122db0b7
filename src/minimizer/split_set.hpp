#pragma once
/// What to do with a set inside a spinodal: two sets, one on each side.

#include "minimizer/phase_sets.hpp"

namespace gibbsteel::internal {

/// Replaces sets[index] by the two minima of D reached along the pair of constituents
/// whose exchange lowers D most, half the amount each.
/// @return false when both sides lead to the same minimum; `sets` is then unchanged
bool split_set(ColumnGeneration& generation, std::span<const double> mu,
               std::size_t index, std::vector<PhaseSet>& sets);

}  // namespace gibbsteel::internal

#pragma once
/// The warnings of several states, each told once.

#include <vector>

#include "gibbsteel/state.hpp"

namespace gibbsteel::internal {

struct SeenWarning {
  Warning warning;
  std::size_t first, last, count;  ///< states that carry it
};

/// In order of first appearance. Partly molten states share one warning that names the
/// least and the most liquid.
std::vector<SeenWarning> seen_warnings(const std::vector<const State*>& states);

std::vector<Warning> distinct_warnings(const std::vector<const State*>& states);

}  // namespace gibbsteel::internal

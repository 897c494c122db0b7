#pragma once
/// Whether a phase can appear or vanish between two nodes that hold the same phases:
/// amounts and, for absent phases, the height D above the tangent plane are followed by
/// Eq. (T1) of cubic_bounds.hpp.

#include "scan/line_node.hpp"

namespace gibbsteel::internal {

/// True when no phase set other than that of `a` and `b` is to be expected between
/// them. Both must be usable, with slopes, and have the same phase set.
bool is_quiet(const LineNode& a, const LineNode& b);

}  // namespace gibbsteel::internal

#pragma once
/// A continuous number that is positive where a kind of phase is present and negative
/// where it is not: its amount, and D of its nearest absent minimum with the sign
/// changed. Its root is the temperature or composition of the change.

#include <optional>
#include <string>

#include "scan/line_node.hpp"

namespace gibbsteel::internal {

/// A kind that one of two nodes holds more often than the other.
struct ChangedKind {
  std::string kind;
  std::size_t more = 0;  ///< how often, where it is held more often
};

/// The first kind of which the nodes do not hold the same number; empty when none.
std::optional<ChangedKind> changed_kind(const LineNode& a, const LineNode& b);

/// Factor on D that makes amount and D meet with the same slope, as far as the slopes
/// at the two nodes can tell: the root is then found in fewer steps.
double presence_scale(const LineNode& a, const LineNode& b, const ChangedKind& changed);

/// Never 0.
double presence(const LineNode& node, const ChangedKind& changed, double scale);

}  // namespace gibbsteel::internal

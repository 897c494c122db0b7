#pragma once
/// All changes of the phase set along a straight line of conditions, in order.
///
/// Nodes at equal distances are solved cold. An interval whose ends differ is divided
/// until every change lies between two nodes closer than the tolerance; an interval
/// whose ends agree is divided when an amount or the height of an absent phase above
/// the tangent plane may come near zero inside (see quiet_interval.hpp). A pair of
/// changes closer to each other than the tolerance, or one that leaves no trace in
/// values and slopes at the nodes, is not seen.

#include <functional>
#include <string>
#include <vector>

#include "scan/line_node.hpp"

namespace gibbsteel::internal {

struct LineScanOptions {
  double spacing = 0.01;    ///< of the nodes, in s, > 0
  double tolerance = 2e-5;  ///< of a change, in s, > 0
  std::size_t most_solves = 20000;
  /// Called after each solve with the number done; return false to stop.
  std::function<bool(std::size_t)> progress;
};

/// The phase set changes between two nodes. Kinds in the direction of growing s.
struct LineEvent {
  std::size_t below = 0, above = 0;  ///< indices of the nodes
  std::vector<std::string> appears, disappears;
};

/// Conditions of which nothing is known.
struct LineGap {
  double from = 0.0, to = 0.0;  ///< nearest usable nodes, or the end of the line
  std::string reason;
};

struct LineScan {
  std::vector<LineNode> nodes;  ///< by s, all that were solved
  std::vector<LineEvent> events;
  std::vector<LineGap> gaps;
  double reached = 1.0;  ///< nothing above is known; 1: complete
  std::string stopped;   ///< why it is not complete; else empty
};

LineScan scan_line(const ConditionLine& line, const LineScanOptions& options);

}  // namespace gibbsteel::internal

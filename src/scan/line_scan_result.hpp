#pragma once
/// From the nodes of a scan to its changes and gaps.

#include "scan/line_scan.hpp"

namespace gibbsteel::internal {

/// Fills scan.events and scan.gaps from scan.nodes. Nodes that are not usable are
/// passed over where their usable neighbours lie within the tolerance: close to the
/// exact conditions of a change the minimizer may find no answer that it can certify.
void find_events_and_gaps(double tolerance, LineScan& scan);

}  // namespace gibbsteel::internal

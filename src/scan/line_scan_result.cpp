#include "scan/line_scan_result.hpp"

#include <algorithm>
#include <iterator>

namespace gibbsteel::internal {
namespace {

std::vector<std::string> only_in(const std::vector<std::string>& a,
                                 const std::vector<std::string>& b) {
  std::vector<std::string> rest;
  std::set_difference(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(rest));
  return rest;
}

/// Kinds whose sets have no partner in the other node: replaced by their own kind.
std::vector<std::string> replaced(const LineNode& a, const LineNode& b) {
  std::vector<std::string> kinds;
  const auto partner = partners(a.result.present, b.result.present, kSamePhase);
  for (std::size_t i = 0; i < partner.size(); ++i)
    if (partner[i] == kNoMatch) kinds.push_back(a.kinds[i]);
  return kinds;
}

LineEvent event_between(const LineScan& scan, std::size_t below, std::size_t above) {
  const LineNode& a = scan.nodes[below];
  const LineNode& b = scan.nodes[above];
  LineEvent event{below, above, {}, {}};
  if (a.phase_set() == b.phase_set()) {
    event.disappears = replaced(a, b);
    event.appears = replaced(b, a);
  } else {
    event.disappears = only_in(a.phase_set(), b.phase_set());
    event.appears = only_in(b.phase_set(), a.phase_set());
  }
  return event;
}

}  // namespace

void find_events_and_gaps(double tolerance, LineScan& scan) {
  const auto& nodes = scan.nodes;
  std::size_t last = nodes.size();  // the last usable node; none yet
  for (std::size_t i = 0; i < nodes.size(); ++i) {
    const bool at_end = i + 1 == nodes.size();
    if (!nodes[i].usable() && !at_end) continue;
    const std::size_t first_bad = last == nodes.size() ? 0 : last + 1;
    const bool bad = first_bad < i || !nodes[i].usable();
    const double from = last == nodes.size() ? 0.0 : nodes[last].s;
    if (bad &&
        (last == nodes.size() || !nodes[i].usable() || nodes[i].s - from > tolerance))
      scan.gaps.push_back({from, nodes[i].s, nodes[first_bad].result.report.reason});
    else if (last != nodes.size() && !same_phase_set(nodes[last], nodes[i]))
      scan.events.push_back(event_between(scan, last, i));
    last = i;
  }
}

}  // namespace gibbsteel::internal

#include "scan/line_scan.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include <boost/math/tools/toms748_solve.hpp>

#include "scan/line_scan_result.hpp"
#include "scan/presence.hpp"
#include "scan/quiet_interval.hpp"
#include "scan/stopped.hpp"

namespace gibbsteel::internal {
namespace {

class Scanner {
 public:
  Scanner(const ConditionLine& line, const LineScanOptions& options)
      : line_(line), options_(options), closest_(options.tolerance / kParts) {}

  LineScan run() {
    LineScan scan;
    try {
      const double count = std::ceil(1.0 / options_.spacing - 1e-9);
      node(0.0);
      for (double k = 1.0; k <= count; ++k) {
        const double s = k / count;
        LineNode& last = node(done_);
        explain(last, node(s));
        done_ = s;
      }
    } catch (const Stopped& stop) {
      scan.stopped = stop.why;
      scan.reached = done_;
    }
    for (auto& [s, solved] : nodes_)
      if (s <= done_) scan.nodes.push_back(std::move(solved));
    find_events_and_gaps(options_.tolerance, scan);
    return scan;
  }

 private:
  LineNode& node(double s) {
    const auto known = nodes_.find(s);
    if (known != nodes_.end()) return known->second;
    LineNode& added = nodes_.emplace(s, solve_node(line_, s)).first->second;
    if (s < 1.0) count_soak(options_, options_.most_solves, nodes_.size());
    return added;
  }

  void need_slopes(LineNode& at) {
    if (!at.slopes) at.slopes = slopes_of(line_, at);
  }

  /// Adds nodes between `a` and `b` until nothing is left to be found between them.
  void explain(LineNode& a, LineNode& b) {
    if (b.s - a.s <= closest_ || !(a.usable() || b.usable())) return;
    const bool known = a.usable() && b.usable();
    if (known && same_phase_set(a, b)) {
      need_slopes(a);
      need_slopes(b);
      if (is_quiet(a, b)) return;
    }
    const auto changed = known ? changed_kind(a, b) : std::nullopt;
    if (changed)
      locate(a, b, *changed);
    else
      node(std::midpoint(a.s, b.s));
    std::vector<LineNode*> inside;
    for (auto it = nodes_.find(a.s); it->first <= b.s; ++it) {
      inside.push_back(&it->second);
      if (it->first == b.s) break;
    }
    for (std::size_t i = 1; i < inside.size(); ++i) explain(*inside[i - 1], *inside[i]);
  }

  /// Brackets a change of one kind of phase to the tolerance.
  void locate(LineNode& a, LineNode& b, const ChangedKind& changed) {
    need_slopes(a);
    need_slopes(b);
    const double scale = presence_scale(a, b, changed);
    const auto value = [&](double s) {
      const LineNode& at = node(s);
      return at.usable() ? presence(at, changed, scale) : 0.0;  // 0 ends the search
    };
    const auto close = [&](double from, double to) {
      return std::abs(to - from) <= closest_;
    };
    std::uintmax_t most = 100;
    boost::math::tools::toms748_solve(value, a.s, b.s, presence(a, changed, scale),
                                      presence(b, changed, scale), close, most);
  }

  /// A node in the middle of a bracket that is not usable may then be passed over.
  static constexpr double kParts = 3.0;

  const ConditionLine& line_;
  const LineScanOptions& options_;
  double closest_;  ///< nodes are not set closer than this on purpose
  std::map<double, LineNode> nodes_;
  double done_ = 0.0;
};

}  // namespace

LineScan scan_line(const ConditionLine& line, const LineScanOptions& options) {
  return Scanner(line, options).run();
}

}  // namespace gibbsteel::internal

#include "section/soak_plane.hpp"

#include <algorithm>
#include <numeric>

#include "scan/line_scan.hpp"

namespace gibbsteel::internal {
namespace {

constexpr std::size_t kMostSolves = 2000;  ///< on one line
/// [mol in 100 g] taken for an element that is absent, about 1e-6 to 1e-5 wt%: nothing
/// beside the tolerances. Soaks with less next to a transformation of the pure metal
/// can stall.
constexpr double kLeastMoles = 2e-7;

/// Appends a field, unless it is the one that is already there.
void enter(double at, PhaseSet set, FieldsOnLine& fields) {
  if (fields.sets.back() == set) return;
  fields.at.push_back(at);
  fields.sets.push_back(std::move(set));
}

/// A place where the set changes to that of a node, or is no longer known.
struct Step {
  double at;
  PhaseSet set;
};

std::vector<Step> steps_of(const LineScan& scan) {
  std::vector<Step> steps;
  for (const LineEvent& event : scan.events) {
    const LineNode& above = scan.nodes[event.above];
    steps.push_back(
        {std::midpoint(scan.nodes[event.below].s, above.s), above.phase_set()});
  }
  for (const LineGap& gap : scan.gaps) {
    steps.push_back({gap.from, {}});
    const auto next = std::find_if(
        scan.nodes.begin(), scan.nodes.end(),
        [&](const LineNode& node) { return node.s >= gap.to && node.usable(); });
    if (next != scan.nodes.end()) steps.push_back({gap.to, next->phase_set()});
  }
  if (!scan.stopped.empty()) steps.push_back({scan.reached, {}});
  std::stable_sort(steps.begin(), steps.end(),
                   [](const Step& a, const Step& b) { return a.at < b.at; });
  return steps;
}

}  // namespace

SoakPlane::SoakPlane(SoakProblem problem, ConditionPlane plane)
    : problem_(std::move(problem)), plane_(std::move(plane)) {}

LineEnd SoakPlane::conditions(PlanePoint at) const {
  LineEnd end = plane_.corner;
  end.temperature =
      Temperature::kelvin(end.temperature.in_kelvin() + at.y * plane_.kelvin_per_y);
  for (std::size_t e = 0; e < end.moles.size(); ++e)
    end.moles[e] = std::max(kLeastMoles, end.moles[e] + at.x * plane_.moles_per_x[e] +
                                             at.y * plane_.moles_per_y[e]);
  return end;
}

FieldsOnLine SoakPlane::along(PlanePoint from, PlanePoint to, double tolerance) const {
  const ConditionLine line(problem_.system, problem_.options.solve, conditions(from),
                           conditions(to));
  LineScanOptions options;
  options.spacing = 1.0;
  options.tolerance = tolerance / std::max(length(to - from), tolerance);
  options.most_solves = kMostSolves;
  const LineScan scan = scan_line(line, options);
  FieldsOnLine fields;
  fields.soaks = scan.nodes.size();
  fields.sets.push_back(scan.nodes.front().usable() ? scan.nodes.front().phase_set()
                                                    : PhaseSet{});
  for (Step& step : steps_of(scan)) enter(step.at, std::move(step.set), fields);
  if (!scan.gaps.empty())
    fields.reason = scan.gaps.front().reason;
  else
    fields.reason = scan.stopped;
  return fields;
}

}  // namespace gibbsteel::internal

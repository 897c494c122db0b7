#include "scan/line_node.hpp"

#include <algorithm>

#include "gibbsteel/assemblage.hpp"
#include "minimizer/conditions.hpp"

namespace gibbsteel::internal {
namespace {

std::vector<std::string> kinds_of(const PhaseSystem& system,
                                  const std::vector<PhasePoint>& points) {
  std::vector<std::string> kinds;
  for (const PhasePoint& point : points)
    kinds.push_back(
        kind_of(system.definition(point.phase), system.phases()[point.phase], point.y));
  return kinds;
}

std::vector<double> differences(const std::vector<PhasePoint>& here,
                                const std::vector<PhasePoint>& there,
                                double PhasePoint::*member, double step) {
  const auto partner = partners(here, there, kSamePhase);
  std::vector<double> slopes(here.size(), SolveReport::kUnset);
  for (std::size_t i = 0; i < here.size(); ++i)
    if (partner[i] != kNoMatch)
      slopes[i] = (there[partner[i]].*member - here[i].*member) / step;
  return slopes;
}

}  // namespace

std::vector<std::string> LineNode::phase_set() const {
  auto sorted = kinds;
  std::sort(sorted.begin(), sorted.end());
  return sorted;
}

LineNode solve_node(const ConditionLine& line, double s) {
  LineNode node;
  node.s = s;
  node.result = line.solve(s);
  node.kinds = kinds_of(line.system(), node.result.present);
  node.absent_kinds = kinds_of(line.system(), node.result.absent);
  return node;
}

LineSlopes slopes_of(const ConditionLine& line, const LineNode& node, double step) {
  LineSlopes slopes{
      std::vector<double>(node.result.present.size(), SolveReport::kUnset),
      std::vector<double>(node.result.absent.size(), SolveReport::kUnset)};
  for (const double signed_step : {step, -step}) {
    const double s = node.s + signed_step;
    if (s < 0.0 || s > 1.0) continue;
    const LineNode other = solve_node(line, s);
    if (!other.usable() || !same_phase_set(node, other)) continue;
    slopes.amount = differences(node.result.present, other.result.present,
                                &PhasePoint::amount, signed_step);
    slopes.d = differences(node.result.absent, other.result.absent,
                           &PhasePoint::driving_force, signed_step);
    for (double& slope : slopes.d) slope = -slope;
    break;
  }
  return slopes;
}

std::vector<std::size_t> partners(const std::vector<PhasePoint>& a,
                                  const std::vector<PhasePoint>& b, double most) {
  struct Pair {
    double apart;
    std::size_t i, j;
  };
  std::vector<Pair> pairs;
  for (std::size_t i = 0; i < a.size(); ++i)
    for (std::size_t j = 0; j < b.size(); ++j) {
      if (a[i].phase != b[j].phase) continue;
      const double apart = distance(a[i].y, b[j].y);
      if (apart <= most) pairs.push_back({apart, i, j});
    }
  std::stable_sort(pairs.begin(), pairs.end(),
                   [](const Pair& p, const Pair& q) { return p.apart < q.apart; });
  std::vector<std::size_t> partner(a.size(), kNoMatch);
  std::vector<bool> taken(b.size(), false);
  for (const Pair& pair : pairs) {
    if (partner[pair.i] != kNoMatch || taken[pair.j]) continue;
    partner[pair.i] = pair.j;
    taken[pair.j] = true;
  }
  return partner;
}

bool same_phase_set(const LineNode& a, const LineNode& b) {
  if (a.phase_set() != b.phase_set()) return false;
  const auto partner = partners(a.result.present, b.result.present, kSamePhase);
  return std::find(partner.begin(), partner.end(), kNoMatch) == partner.end();
}

}  // namespace gibbsteel::internal

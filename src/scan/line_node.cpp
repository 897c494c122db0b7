#include "scan/line_node.hpp"

#include <algorithm>

#include "gibbsteel/assemblage.hpp"
#include "gibbsteel/linearization.hpp"
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

void add(const EquilibriumSlope& slope, double factor, LineSlopes& sum) {
  for (std::size_t i = 0; i < sum.amount.size(); ++i)
    sum.amount[i] += factor * slope.present[i].amount;
  for (std::size_t i = 0; i < sum.d.size(); ++i)
    sum.d[i] -= factor * slope.absent_driving_force[i];
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

LineSlopes slopes_of(const ConditionLine& line, const LineNode& node) {
  LineSlopes slopes{std::vector<double>(node.result.present.size(), 0.0),
                    std::vector<double>(node.result.absent.size(), 0.0)};
  const Linearization at(line.system(), node.result, line.mole_fractions(node.s));
  if (line.kelvin_slope() != 0.0) add(at.per_kelvin(), line.kelvin_slope(), slopes);
  const auto composition = line.mole_fraction_slopes(node.s);
  const bool constant = std::all_of(composition.begin(), composition.end(),
                                    [](double slope) { return slope == 0.0; });
  if (!constant) add(at.along(composition), 1.0, slopes);
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

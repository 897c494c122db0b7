#include "minimizer/twin_starts.hpp"

#include "minimizer/phase_minimum.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kClose = 0.1;  ///< largest difference of site fractions

/// Index of the closest set of a phase, sets.size() when none is close.
std::size_t closest_set(const std::vector<PhaseSet>& sets, std::size_t phase,
                        std::span<const double> y) {
  std::size_t best = sets.size();
  double nearest = kClose;
  for (std::size_t f = 0; f < sets.size(); ++f) {
    if (sets[f].phase != phase || !(distance(sets[f].y, y) < nearest)) continue;
    best = f;
    nearest = distance(sets[f].y, y);
  }
  return best;
}

/// Where the other half of a set goes: opposite to y, then to other minima.
std::vector<std::vector<double>> other_halves(const CompiledPhase& phase,
                                              const std::vector<double>& from,
                                              std::span<const AbsentMinimum> below) {
  const AbsentMinimum& lowest = below.front();
  std::vector<double> away(from.size());
  for (std::size_t i = 0; i < from.size(); ++i) away[i] = from[i] - lowest.y[i];
  std::vector<std::vector<double>> halves(1, std::vector<double>(from.size()));
  update_fractions(phase, from.data(), away.data(), 1.0, halves.front().data());
  for (const AbsentMinimum& m : below.subspan(1))
    if (m.phase == lowest.phase && distance(m.y, from) < kClose) halves.push_back(m.y);
  return halves;
}

}  // namespace

std::vector<std::vector<PhaseSet>> twin_starts(const Conditions& conditions,
                                               const std::vector<PhaseSet>& sets,
                                               std::span<const AbsentMinimum> below) {
  const AbsentMinimum& lowest = below.front();
  const std::size_t twin = closest_set(sets, lowest.phase, lowest.y);
  if (twin == sets.size()) return {};
  std::vector<std::vector<PhaseSet>> starts{sets};
  starts.front()[twin].y = lowest.y;
  if (sets.size() >= conditions.elements()) return starts;
  const CompiledPhase& phase = *conditions.phases[lowest.phase].phase;
  for (auto& y : other_halves(phase, sets[twin].y, below)) {
    auto both = starts.front();
    both[twin].amount *= 0.5;
    both.push_back(both[twin]);
    both.back().y = std::move(y);
    starts.push_back(std::move(both));
  }
  return starts;
}

}  // namespace gibbsteel::internal

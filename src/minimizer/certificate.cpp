#include "minimizer/certificate.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {
namespace {

constexpr double kSame = 2.0 * kMergeDistance;  ///< closer than this: one minimum

bool is_present(const std::vector<PhaseSet>& sets, std::size_t phase,
                std::span<const double> y) {
  return std::any_of(sets.begin(), sets.end(), [&](const PhaseSet& set) {
    return set.phase == phase && distance(set.y, y) < kSame;
  });
}

bool is_known(const std::vector<AbsentMinimum>& minima, std::size_t phase,
              std::span<const double> y) {
  return std::any_of(minima.begin(), minima.end(), [&](const AbsentMinimum& m) {
    return m.phase == phase && distance(m.y, y) < kSame;
  });
}

/// Descends from `y` until D is known well enough: a minimum far above the plane needs
/// no digits, one near or below it needs all of them.
AbsentMinimum descend_fully(ColumnGeneration& generation, std::size_t phase,
                            std::span<const double> mu, std::vector<double> y) {
  constexpr double kNear = 50.0;  // [J/mol of atoms]
  Conditions& conditions = generation.conditions();
  const Candidate& candidate = conditions.phases[phase];
  const DescentLimits coarse{60, 1e-2}, fine{300, 1e-8};
  auto minimum =
      descend(conditions, candidate, mu, coarse, generation.step(), y.data());
  if (!minimum.converged || !(minimum.d_per_atom() > kNear))
    minimum = descend(conditions, candidate, mu, fine, generation.step(), y.data());
  return {phase, std::move(y), minimum.d_per_atom(), minimum.converged};
}

void test_phase(ColumnGeneration& generation, std::size_t phase,
                const std::vector<PhaseSet>& sets, std::span<const double> mu,
                std::size_t starts, std::vector<AbsentMinimum>& minima) {
  ColumnPool& pool = generation.pool();
  for (const auto start : distant_columns(pool, phase, mu, starts, 0.15, true)) {
    const auto from = pool.y(start);
    auto minimum = descend_fully(generation, phase, mu, {from.begin(), from.end()});
    if (is_present(sets, phase, minimum.y) || is_known(minima, phase, minimum.y))
      continue;
    minima.push_back(std::move(minimum));
  }
}

}  // namespace

std::vector<AbsentMinimum> test_plane(ColumnGeneration& generation,
                                      const std::vector<PhaseSet>& sets,
                                      std::span<const double> mu,
                                      int starts_per_phase) {
  std::vector<AbsentMinimum> minima;
  for (std::size_t f = 0; f < generation.conditions().phases.size(); ++f)
    test_phase(generation, f, sets, mu, static_cast<std::size_t>(starts_per_phase),
               minima);
  std::sort(minima.begin(), minima.end(),
            [](const auto& a, const auto& b) { return a.d < b.d; });
  return minima;
}

void polish(ColumnGeneration& generation, const std::vector<PhaseSet>& sets,
            std::span<const double> mu, std::vector<AbsentMinimum>& minima) {
  Conditions& conditions = generation.conditions();
  std::vector<AbsentMinimum> distinct;
  for (auto& m : minima) {
    std::vector<double> raised(mu.begin(), mu.end());
    for (int pass = 0; pass < 8; ++pass) {
      for (std::size_t e = 0; e < raised.size(); ++e) raised[e] = mu[e] + m.d;
      const auto result = descend(conditions, conditions.phases[m.phase], raised,
                                  {200, 1e-9}, generation.step(), m.y.data());
      m.converged = result.converged;
      const double change = result.d / result.atoms;
      m.d += change;
      if (!(std::abs(change) > 1e-7)) break;
    }
    if (!is_present(sets, m.phase, m.y) && !is_known(distinct, m.phase, m.y))
      distinct.push_back(m);
  }
  std::sort(distinct.begin(), distinct.end(),
            [](const auto& a, const auto& b) { return a.d < b.d; });
  minima = std::move(distinct);
}

}  // namespace gibbsteel::internal

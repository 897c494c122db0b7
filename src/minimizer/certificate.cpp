#include "minimizer/certificate.hpp"

#include <algorithm>

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

void test_phase(ColumnGeneration& generation, std::size_t phase,
                const std::vector<PhaseSet>& sets, std::span<const double> mu,
                std::size_t starts, std::vector<AbsentMinimum>& minima) {
  Conditions& conditions = generation.conditions();
  const Candidate& candidate = conditions.phases[phase];
  ColumnPool& pool = generation.pool();
  const DescentLimits limits{40, 1e-7, true};
  for (const auto start : distant_columns(pool, phase, mu, starts, 0.15, true)) {
    const auto from = pool.y(start);
    std::vector<double> y(from.begin(), from.end());
    const auto minimum =
        descend(conditions, candidate, mu, limits, generation.step(), y.data());
    if (is_present(sets, phase, y) || is_known(minima, phase, y)) continue;
    minima.push_back({phase, std::move(y), minimum.d_per_atom()});
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

void polish(ColumnGeneration& generation, std::span<const double> mu,
            std::vector<AbsentMinimum>& minima) {
  Conditions& conditions = generation.conditions();
  std::vector<AbsentMinimum> distinct;
  for (auto& m : minima) {
    std::vector<double> raised(mu.begin(), mu.end());
    bool converged = true;
    for (int pass = 0; pass < 6; ++pass) {
      for (std::size_t e = 0; e < raised.size(); ++e) raised[e] = mu[e] + m.d;
      const auto result = descend(conditions, conditions.phases[m.phase], raised, {},
                                  generation.step(), m.y.data());
      converged = result.converged;
      const double change = result.d / result.atoms;
      m.d += change;
      if (std::abs(change) < 1e-7) break;
    }
    if (converged && !is_known(distinct, m.phase, m.y)) distinct.push_back(m);
  }
  std::sort(distinct.begin(), distinct.end(),
            [](const auto& a, const auto& b) { return a.d < b.d; });
  minima = std::move(distinct);
}

}  // namespace gibbsteel::internal

#include "minimizer/certificate.hpp"

#include <algorithm>
#include <cmath>

#include "minimizer/kink_starts.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kSame = 2.0 * kMergeDistance;  ///< closer than this: one minimum

/// Where the moment of a phase changes sign, two minima may be closer than kSame, on
/// either side of a kink: one that is below the plane is not the present one.
bool is_present(const std::vector<PhaseSet>& sets, const AbsentMinimum& minimum,
                double tolerance) {
  if (minimum.d < -tolerance) return false;
  return std::any_of(sets.begin(), sets.end(), [&](const PhaseSet& set) {
    return set.phase == minimum.phase && distance(set.y, minimum.y) < kSame;
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

/// All minima that the starts lead to.
class PlaneTest {
 public:
  PlaneTest(ColumnGeneration& generation, const std::vector<PhaseSet>& sets,
            std::span<const double> mu, const SolveOptions& options)
      : generation_(generation), sets_(sets), mu_(mu), options_(options) {}

  void from_columns(std::size_t phase) {
    ColumnPool& pool = generation_.pool();
    const auto starts = static_cast<std::size_t>(options_.starts_per_phase);
    for (const auto start : distant_columns(pool, phase, mu_, starts, 0.15, true)) {
      const auto from = pool.y(start);
      add(descend_fully(generation_, phase, mu_, {from.begin(), from.end()}));
    }
  }

  void from_kinks(const PhaseSet& set) {
    const auto& phase = *generation_.conditions().phases[set.phase].phase;
    for (auto& y : kink_starts(phase, set.y))
      add(descend_fully(generation_, set.phase, mu_, std::move(y)));
  }

  std::vector<AbsentMinimum> minima() && { return std::move(minima_); }

 private:
  void add(AbsentMinimum minimum) {
    if (!is_present(sets_, minimum, options_.stability_tolerance) &&
        !is_known(minima_, minimum.phase, minimum.y))
      minima_.push_back(std::move(minimum));
  }

  ColumnGeneration& generation_;
  const std::vector<PhaseSet>& sets_;
  std::span<const double> mu_;
  const SolveOptions& options_;
  std::vector<AbsentMinimum> minima_;
};

}  // namespace

std::vector<AbsentMinimum> test_plane(ColumnGeneration& generation,
                                      const std::vector<PhaseSet>& sets,
                                      std::span<const double> mu,
                                      const SolveOptions& options) {
  PlaneTest test(generation, sets, mu, options);
  for (std::size_t f = 0; f < generation.conditions().phases.size(); ++f)
    test.from_columns(f);
  for (const PhaseSet& set : sets) test.from_kinks(set);
  auto minima = std::move(test).minima();
  std::sort(minima.begin(), minima.end(),
            [](const auto& a, const auto& b) { return a.d < b.d; });
  return minima;
}

void polish(ColumnGeneration& generation, const std::vector<PhaseSet>& sets,
            std::span<const double> mu, const SolveOptions& options,
            std::vector<AbsentMinimum>& minima) {
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
    if (!is_present(sets, m, options.stability_tolerance) &&
        !is_known(distinct, m.phase, m.y))
      distinct.push_back(m);
  }
  std::sort(distinct.begin(), distinct.end(),
            [](const auto& a, const auto& b) { return a.d < b.d; });
  minima = std::move(distinct);
}

}  // namespace gibbsteel::internal

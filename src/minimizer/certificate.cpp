#include "minimizer/certificate.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

#include "minimizer/distant_columns.hpp"
#include "minimizer/kink_starts.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kFewDigits = 50.0;             ///< [J/mol of atoms] from here up
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

/// Atoms per formula unit, every site filled.
double most_atoms(const CompiledPhase& phase) {
  double sum = 0.0;
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s)
    sum += phase.sites[phase.first[s]];
  return sum;
}

bool is_known(const std::vector<AbsentMinimum>& minima, std::size_t phase,
              std::span<const double> y) {
  return std::any_of(minima.begin(), minima.end(), [&](const AbsentMinimum& m) {
    return m.phase == phase && distance(m.y, y) < kSame;
  });
}

/// Minima that the starts lead to.
class PlaneTest {
 public:
  PlaneTest(ColumnGeneration& generation, const std::vector<PhaseSet>& sets,
            std::span<const double> mu, const SolveOptions& options,
            PlaneTestDepth depth)
      : generation_(generation), sets_(sets), mu_(mu), options_(options) {
    if (depth == PlaneTestDepth::near_minima) far_ = kNearPlane;
  }

  void from_columns(std::size_t phase) {
    ColumnPool& pool = generation_.pool();
    const auto count = static_cast<std::size_t>(options_.starts_per_phase);
    DescentStarts starts;
    for (const auto start : distant_columns(pool, phase, mu_, {count, 0.15, true}))
      starts.add(pool.y(start));
    descend_from(phase, starts);
  }

  void from_kinks(const PhaseSet& set) {
    const auto& phase = *generation_.conditions().phases[set.phase].phase;
    DescentStarts starts;
    for (const auto& y : kink_starts(phase, generation_.conditions().kelvin, set.y))
      starts.add(y);
    descend_from(set.phase, starts);
  }

  /// Between two sets of one phase there may be a third.
  void between(const PhaseSet& a, const PhaseSet& b) {
    if (a.phase != b.phase) return;
    DescentStarts starts;
    std::vector<double> y(a.y.size());
    for (const double share : {0.25, 0.5, 0.75}) {
      for (std::size_t i = 0; i < y.size(); ++i)
        y[i] = a.y[i] + share * (b.y[i] - a.y[i]);
      starts.add(y);
    }
    descend_from(a.phase, starts);
  }

  std::vector<AbsentMinimum> minima() && { return std::move(minima_); }

 private:
  /// Descends until D is known well enough: a minimum far above the plane needs no
  /// digits, one near or below it needs all of them.
  void descend_from(std::size_t phase, DescentStarts& starts) {
    Conditions& conditions = generation_.conditions();
    const Candidate& candidate = conditions.phases[phase];
    const double enough = far_ * most_atoms(*candidate.phase);
    const DescentLimits coarse{60, 1e-2, false, enough}, fine{300, 1e-8};
    const auto jobs = starts.jobs();
    descend(conditions, candidate, mu_, coarse, generation_.memory(), jobs);
    std::vector<DescentJob> exact;
    std::copy_if(jobs.begin(), jobs.end(), std::back_inserter(exact), needs_digits);
    descend(conditions, candidate, mu_, fine, generation_.memory(), exact);
    auto next = exact.begin();
    for (DescentJob& job : jobs) {
      if (job.result.stopped_above) continue;
      if (needs_digits(job)) job = *next++;
      const auto y = starts.y(job);
      add({phase, {y.begin(), y.end()}, job.result.d_per_atom(), job.result.converged});
    }
  }

  static bool needs_digits(const DescentJob& job) noexcept {
    const DescentResult& minimum = job.result;
    return !minimum.stopped_above &&
           !(minimum.converged && minimum.d_per_atom() > kFewDigits);
  }

  void add(AbsentMinimum minimum) {
    if (!is_present(sets_, minimum, options_.stability_tolerance) &&
        !is_known(minima_, minimum.phase, minimum.y))
      minima_.push_back(std::move(minimum));
  }

  ColumnGeneration& generation_;
  const std::vector<PhaseSet>& sets_;
  std::span<const double> mu_;
  const SolveOptions& options_;
  double far_ = std::numeric_limits<double>::infinity();  ///< [J/mol of atoms]
  std::vector<AbsentMinimum> minima_;
};

}  // namespace

std::vector<AbsentMinimum> test_plane(ColumnGeneration& generation,
                                      const std::vector<PhaseSet>& sets,
                                      std::span<const double> mu,
                                      const SolveOptions& options,
                                      PlaneTestDepth depth) {
  PlaneTest test(generation, sets, mu, options, depth);
  for (std::size_t f = 0; f < generation.conditions().phases.size(); ++f)
    test.from_columns(f);
  for (const PhaseSet& set : sets) test.from_kinks(set);
  for (std::size_t a = 0; a < sets.size(); ++a)
    for (std::size_t b = 0; b < a; ++b) test.between(sets[a], sets[b]);
  auto minima = std::move(test).minima();
  std::sort(minima.begin(), minima.end(),
            [](const auto& a, const auto& b) { return a.d < b.d; });
  return minima;
}

std::vector<AbsentMinimum> glance_below(ColumnGeneration& generation,
                                        std::span<const double> mu,
                                        const SolveOptions& options) {
  std::vector<AbsentMinimum> below;
  for (std::size_t f = 0; f < generation.conditions().phases.size(); ++f) {
    DescentStarts starts;
    for (const DescentJob& job : generation.price(f, mu, starts)) {
      const auto y = starts.y(job);
      if (job.result.d_per_atom() < -options.stability_tolerance &&
          !is_known(below, f, y))
        below.push_back({f, {y.begin(), y.end()}, job.result.d_per_atom(), false});
    }
  }
  std::sort(below.begin(), below.end(),
            [](const auto& a, const auto& b) { return a.d < b.d; });
  return below;
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
                                  {200, 1e-9}, generation.memory(), m.y.data());
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

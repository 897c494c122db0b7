/// Descents in lanes: the results depend neither on how many lanes there are nor on
/// which starts share them, to the bit.

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "../../benchmarks/high_speed_steel.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "minimizer/phase_minimum.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;

namespace {

/// All elements of the shipped file: every phase has all its constituents.
struct Case {
  Equilibrium solved;
  PhaseSystem system;
  Conditions conditions;
};

Case high_speed_steel(double celsius) {
  const Steel& steel = benchmarks::high_speed_steel();
  PhaseSystem system(default_parameters(), steel.elements(), benchmarks::all_phases());
  const auto t = Temperature::celsius(celsius);
  Equilibrium solved = minimize(system, t, steel.mole_fractions());
  Case made{std::move(solved), std::move(system), {}};
  made.conditions = conditions_of(made.system, t, steel.mole_fractions());
  return made;
}

/// Compositions from corner to middle, some with next to nothing of a constituent, some
/// inside spinodals.
std::vector<double> random_starts(const CompiledPhase& phase, std::size_t count) {
  std::mt19937_64 random(7);
  std::gamma_distribution<double> gamma(0.3, 1.0);
  std::vector<double> starts;
  for (std::size_t k = 0; k < count; ++k)
    for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
      const std::size_t size = phase.first[s + 1] - phase.first[s];
      std::vector<double> y(size);
      double sum = 0.0;
      for (double& share : y) sum += share = gamma(random) + (k % 2 ? 1e-80 : 1e-9);
      for (const double share : y) starts.push_back(share / sum);
    }
  return starts;
}

struct Descended {
  std::vector<double> y;
  std::vector<DescentJob> jobs;
  int evaluations = 0;
};

Descended descend_with(const Case& at, const Candidate& candidate,
                       const DescentLimits& limits, std::vector<double> starts,
                       std::size_t count, std::size_t lanes) {
  Descended result{std::move(starts), std::vector<DescentJob>(count), 0};
  const std::size_t n = candidate.size();
  for (std::size_t k = 0; k < count; ++k) {
    result.jobs[k].y = result.y.data() + k * n;
    result.jobs[k].raised = k % 5 == 0 ? 0.1 : 0.0;
  }
  std::vector<double> weights(n);
  plane_weights(*candidate.phase, at.solved.chemical_potential, weights.data());
  DescentTask task;
  task.phase = candidate.phase;
  task.at = &candidate.at;
  task.rt = at.conditions.rt;
  task.weights = weights.data();
  task.limits = limits;
  task.jobs = result.jobs.data();
  task.count = count;
  DescentMemory memory;
  run_descents(task, memory, lanes);
  result.evaluations = task.evaluations;
  return result;
}

void check_same(const Descended& a, const Descended& b) {
  CHECK(a.y == b.y);
  CHECK(a.evaluations == b.evaluations);
  for (std::size_t k = 0; k < a.jobs.size(); ++k) {
    const DescentResult &one = a.jobs[k].result, &other = b.jobs[k].result;
    CHECK(one.d == other.d);
    CHECK(one.energy == other.energy);
    CHECK(one.atoms == other.atoms);
    CHECK(one.converged == other.converged);
    CHECK(one.stopped_above == other.stopped_above);
  }
}

}  // namespace

TEST_CASE("the same bits in one, two, four and eight lanes") {
  constexpr std::size_t kStarts = 37;  // no multiple of the lanes
  MESSAGE("this machine has " << widest_lanes() << " lanes");
  for (const double celsius : {500.0, 1150.0}) {
    const Case at = high_speed_steel(celsius);
    REQUIRE(at.solved.report.usable());
    for (const Candidate& candidate : at.conditions.phases)
      for (const DescentLimits& limits :
           {DescentLimits{300, 1e-8}, DescentLimits{12, 1e-3, true},
            DescentLimits{60, 1e-2, false, 1000.0}, DescentLimits{2, 1e-8}}) {
        CAPTURE(candidate.phase->name);
        const auto starts = random_starts(*candidate.phase, kStarts);
        const auto alone = descend_with(at, candidate, limits, starts, kStarts, 1);
        for (std::size_t lanes = 2; lanes <= widest_lanes(); lanes *= 2) {
          CAPTURE(lanes);
          check_same(alone,
                     descend_with(at, candidate, limits, starts, kStarts, lanes));
        }
      }
  }
}

TEST_CASE("a start leads to the same place whatever else is in the lanes") {
  const Case at = high_speed_steel(900.0);
  const DescentLimits limits{300, 1e-8};
  for (const Candidate& candidate : at.conditions.phases) {
    CAPTURE(candidate.phase->name);
    const std::size_t n = candidate.size();
    const auto starts = random_starts(*candidate.phase, 11);
    const auto together = descend_with(at, candidate, limits, starts, 11, 8);
    for (std::size_t k = 0; k < 11; k += 5) {  // those with raised potentials
      const auto from = starts.begin() + static_cast<std::ptrdiff_t>(k * n);
      const std::vector<double> own(from, from + static_cast<std::ptrdiff_t>(n));
      const auto alone = descend_with(at, candidate, limits, own, 1, 1);
      CHECK(std::equal(alone.y.begin(), alone.y.end(),
                       together.y.begin() + static_cast<std::ptrdiff_t>(k * n)));
      CHECK(alone.jobs[0].result.d == together.jobs[k].result.d);
    }
  }
}

TEST_CASE("where a descent ends, no small exchange of atoms lowers D") {
  // The definition of a minimum: no own derivative is asked.
  const Case at = high_speed_steel(1150.0);
  for (const Candidate& candidate : at.conditions.phases) {
    const CompiledPhase& phase = *candidate.phase;
    CAPTURE(phase.name);
    const std::size_t n = candidate.size();
    const auto end = descend_with(at, candidate, {300, 1e-8}, random_starts(phase, 9),
                                  9, widest_lanes());
    std::vector<double> weights(n);
    plane_weights(phase, at.solved.chemical_potential, weights.data());
    for (const DescentJob& job : end.jobs) {
      CHECK(job.result.converged);
      for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < n; ++j) {
          if (i == j ||
              phase.constituents[i].sublattice != phase.constituents[j].sublattice)
            continue;
          std::vector<double> y(job.y, job.y + n);
          const double size = 1e-3 * std::min(y[i], y[j]);
          y[i] += size;
          y[j] -= size;
          double d = gibbs_energy(phase, candidate.at, y.data());
          for (std::size_t k = 0; k < n; ++k)
            d -= (weights[k] + (job.raised > 0.0 && phase.constituents[k].element >= 0
                                    ? job.raised * phase.sites[k]
                                    : 0.0)) *
                 y[k];
          CHECK(d > job.result.d - 1e-7);
        }
    }
  }
}

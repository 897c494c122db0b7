/// Descents that resume against descents that do not: the same bits, with fewer
/// Hessians.

#include <doctest/doctest.h>

#include "continuation/resumed_descent.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/steel.hpp"
#include "internal/soak_problem.hpp"
#include "minimizer/phase_minimum.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;

namespace {

Steel high_speed() {
  return Steel({{"C", 0.85},
                {"Cr", 4.1},
                {"Mo", 5.0},
                {"W", 6.2},
                {"V", 1.9},
                {"Co", 5.0},
                {"Si", 0.3}});
}

std::vector<double> raised(const std::vector<double>& mu, double by) {
  std::vector<double> all = mu;
  for (double& potential : all) potential += by;
  return all;
}

/// What an absent minimum goes through at a new temperature: roughly to the minimum,
/// then, with the potentials raised by D, to the last digits until D stays.
template <class Descend>
std::vector<DescentResult> go_through(const std::vector<double>& mu,
                                      const Descend& descend_at) {
  std::vector<DescentResult> results{descend_at(mu, DescentLimits{60, 1e-2})};
  double d = results.back().d_per_atom();
  for (int pass = 0; pass < 3; ++pass) {
    results.push_back(descend_at(raised(mu, d), DescentLimits{200, 1e-8}));
    d += results.back().d_per_atom();
  }
  return results;
}

struct Tally {
  int minima = 0, hessians = 0, resumed_hessians = 0;
};

void compare(Conditions& conditions, const PhasePoint& start,
             const std::vector<double>& mu, ResumedDescent& resumed,
             DescentMemory& memory, Tally& tally) {
  const Candidate& candidate = conditions.phases[start.phase];
  std::vector<double> y = start.y, resumed_y = start.y;
  conditions.evaluations = 0;
  const auto expected =
      go_through(mu, [&](const std::vector<double>& at, const DescentLimits& limits) {
        return descend(conditions, candidate, at, limits, memory, y.data());
      });
  tally.hessians += conditions.evaluations;
  conditions.evaluations = 0;
  resumed.begin(conditions, candidate, resumed_y.data());
  const auto results =
      go_through(mu, [&](const std::vector<double>& at, const DescentLimits& limits) {
        return resumed.to_minimum(at, limits);
      });
  tally.resumed_hessians += conditions.evaluations;
  ++tally.minima;
  INFO(candidate.phase->name, " at ", conditions.kelvin, " K");
  CHECK(resumed_y == y);
  for (std::size_t k = 0; k < results.size(); ++k) {
    CHECK(results[k].d == expected[k].d);
    CHECK(results[k].energy == expected[k].energy);
    CHECK(results[k].atoms == expected[k].atoms);
    CHECK(results[k].converged == expected[k].converged);
  }
}

}  // namespace

TEST_CASE("descents that resume give the bits of those that do not") {
  const SoakProblem problem(high_speed(), {});
  ResumedDescent resumed;
  DescentMemory memory(kMaxConstituents);
  Tally tally;
  for (double celsius = 700.0; celsius <= 1250.0; celsius += 50.0)
    for (const double step : {0.02, 0.2, 2.0, 20.0}) {
      const auto before = problem.solve(Temperature::celsius(celsius));
      const auto after = problem.solve(Temperature::celsius(celsius + step));
      REQUIRE(after.report.usable());
      auto conditions =
          conditions_of(problem.system, after.temperature, problem.mole_fractions);
      for (const PhasePoint& start : before.absent)
        compare(conditions, start, after.chemical_potential, resumed, memory, tally);
    }
  CHECK(tally.minima > 300);
  MESSAGE(tally.minima, " minima, Hessians ", tally.hessians, " and ",
          tally.resumed_hessians);
  CHECK(tally.resumed_hessians < 0.6 * tally.hessians);
}

TEST_CASE("a resumed descent stops where its steps end, like the other") {
  const SoakProblem problem(high_speed(), {});
  const auto soak = problem.solve(Temperature::celsius(1100.0));
  auto conditions =
      conditions_of(problem.system, soak.temperature, problem.mole_fractions);
  ResumedDescent resumed;
  DescentMemory memory(kMaxConstituents);
  for (const PhasePoint& start : soak.absent)
    for (const int steps : {1, 2, 3}) {
      const Candidate& candidate = conditions.phases[start.phase];
      const auto mu = raised(soak.chemical_potential, 3000.0);
      std::vector<double> y = start.y, resumed_y = start.y;
      const auto expected =
          descend(conditions, candidate, mu, {steps, 1e-8}, memory, y.data());
      resumed.begin(conditions, candidate, resumed_y.data());
      const auto result = resumed.to_minimum(mu, {steps, 1e-8});
      CHECK(resumed_y == y);
      CHECK(result.converged >= expected.converged);  // it looks once more at the end
      CHECK(result.atoms == expected.atoms);
    }
}

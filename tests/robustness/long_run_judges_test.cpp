/// The judges of the long run see what is wrong: results of a search that was kept from
/// a phase, held against the whole system.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "long/checks.hpp"
#include "long/cold_conditions.hpp"
#include "long/sweep_lines.hpp"
#include "unit/solve_helpers.hpp"

using namespace gibbsteel;
using namespace gibbsteel::long_run;

namespace {

const Temperature kSoak = Temperature::celsius(1000);
const testing::Composition kHighSpeed{
    {"C", 0.9}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}};

/// The lowest energy without M6C, its phases numbered as in `whole`.
Equilibrium without_m6c(const testing::Solved& whole) {
  auto names = testing::steel_phases();
  std::erase(names, "M6C");
  auto other = testing::solve_weight(kHighSpeed, kSoak, names);
  REQUIRE(other.result.report.usable());
  for (PhasePoint& point : other.result.present) {
    const std::string name = other.system.phases()[point.phase].name();
    const auto& all = whole.system.phases();
    point.phase = static_cast<std::size_t>(
        std::find_if(all.begin(), all.end(),
                     [&](const PhaseModel& model) { return model.name() == name; }) -
        all.begin());
  }
  return std::move(other.result);
}

}  // namespace

TEST_CASE("a result without a phase that should be there fails before each judge") {
  const auto whole = testing::solve_weight(kHighSpeed, kSoak);
  REQUIRE(whole.result.report.usable());
  REQUIRE_FALSE(whole.of("M6C").empty());
  const Equilibrium wrong = without_m6c(whole);
  std::mt19937_64 random(1);
  CHECK(deep_search(whole.system, whole.result, whole.overall, 20, random) >=
        -kTolerance);
  CHECK(deep_search(whole.system, wrong, whole.overall, 20, random) < -1.0);
  CHECK(std::abs(whole.result.gibbs_energy - plane(whole.result, whole.overall)) <
        1e-8);
  CHECK(whole.result.gibbs_energy - plane(wrong, whole.overall) < -1.0);
  const auto near =
      testing::solve_weight(kHighSpeed, Temperature::kelvin(kSoak.in_kelvin() + 1.0));
  const double carried = energy_carried_over(near.system, near.result, kSoak);
  CHECK(carried - whole.result.gibbs_energy >= -kTolerance);
  CHECK(carried - wrong.gibbs_energy < -1.0);
}

TEST_CASE("an amount that is off by a millionth is seen in the balance") {
  auto whole = testing::solve_weight(kHighSpeed, kSoak);
  CHECK(balance_error(whole.system, whole.result, whole.overall) < 1e-11);
  whole.result.present[0].amount *= 1.0 + 1e-6;
  CHECK(balance_error(whole.system, whole.result, whole.overall) > 1e-7);
}

TEST_CASE("groups and lines are the same ones each time, and what they say they are") {
  const SharedParameters set = default_parameters();
  for (const std::size_t number : {0U, 7U, 9U}) {
    const Group one = group(*set, number), again = group(*set, number);
    REQUIRE(one.steels.size() == kGroupSize);
    for (std::size_t k = 0; k < kGroupSize; ++k) {
      CHECK(one.steels[k].x == again.steels[k].x);
      CHECK(one.steels[k].elements == one.steels[0].elements);
      CHECK(one.steels[k].celsius == one.steels[0].celsius);
    }
  }
  CHECK(line(*set, 0).element.empty());
  CHECK(line(*set, 8).values.back() == doctest::Approx(2226.0));
  const Line carbon = line(*set, 1);
  CHECK_FALSE(carbon.element.empty());
  CHECK(carbon.values.size() == kLinePoints);
}

TEST_CASE("what the library flags is counted, with its reason") {
  Equilibrium result;
  result.report.status = SolveStatus::stalled;
  result.report.reason = "invented";
  Outcome outcome;
  CHECK_FALSE(count(result, 3, 4, Draw::many_traces, 5, 0.1, outcome));
  Outcome sum;
  sum.add(Outcome(outcome));
  sum.add(std::move(outcome));
  CHECK(sum.flagged.size() == 2);
  CHECK(sum.flagged[0].part == 3);
  const Tally& tally = sum.by_draw[static_cast<std::size_t>(Draw::many_traces)];
  CHECK(tally.solved == 2);
  CHECK(tally.converged == 0);
  CHECK(tally.flagged.at("invented") == 2);
}

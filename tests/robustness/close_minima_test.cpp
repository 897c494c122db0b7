/// Conditions of the long run at which two minima of one phase lie close together: on
/// either side of a kink, where a moment or Curie temperature changes sign, or near a
/// consolute point. Each was wrong or flagged once. Judges: the proof by interval
/// arithmetic, which knows nothing of starts, and for lines the cold soak.

#include <doctest/doctest.h>

#include <cmath>

#include "continuation/solve_line.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "long/conditions.hpp"

using namespace gibbsteel;

namespace {

constexpr double kSameEnergy = 1e-5;  ///< [J/mol of atoms]

PhaseSystem system_of(const std::vector<std::string>& elements) {
  const auto set = default_parameters();
  return {set, elements, testing::phases_without_graphite(*set)};
}

}  // namespace

TEST_CASE("a minimum close to a present set is found and taken over") {
  struct Condition {
    std::size_t group, member;
  };
  for (const Condition& condition :
       {Condition{8409, 1}, {6382, 6}, {836, 1}, {2369, 3}, {3477, 0}}) {
    CAPTURE(condition.group);
    const auto group = long_run::group(*default_parameters(), condition.group);
    const auto& steel = group.steels[condition.member];
    const PhaseSystem system = system_of(steel.elements);
    const auto celsius = Temperature::celsius(steel.celsius);
    const Equilibrium found = minimize(system, celsius, steel.x);
    CHECK(found.report.usable());
    SolveOptions proof;
    proof.certify = Certificate::proof;
    proof.proof_seconds = 600.0;
    const Equilibrium proven = minimize(system, celsius, steel.x, proof);
    CHECK(proven.report.certificate == Certificate::proof);
    CHECK(std::abs(found.gibbs_energy - proven.gibbs_energy) < kSameEnergy);
  }
}

namespace {

/// Points of a line of the long run, followed and solved cold one by one.
void check_followed(std::size_t number, std::size_t first, std::size_t last) {
  CAPTURE(number);
  const auto line = long_run::line(*default_parameters(), number);
  const PhaseSystem system = system_of(line.steel.elements());
  std::vector<internal::LinePoint> points;
  for (std::size_t i = first; i < last; ++i)
    points.push_back(
        {Temperature::celsius(line.values[i]), line.steel.mole_fractions()});
  internal::solve_line(system, {}, points, [&](std::size_t i, Equilibrium&& followed) {
    CAPTURE(points[i].temperature.in_celsius());
    const Equilibrium cold =
        minimize(system, points[i].temperature, points[i].mole_fractions);
    CHECK(cold.report.usable());
    CHECK(followed.report.lowest_absent > -1e-3);
    CHECK(std::abs(followed.gibbs_energy - cold.gibbs_energy) < kSameEnergy);
    return true;
  });
}

}  // namespace

TEST_CASE("a set that jumps to another minimum is not followed") {
  check_followed(848, 12, 24);
}

TEST_CASE("a minimum that falls faster than its slope says is looked at") {
  // Steps of 22 K: a ferrite came down by 10 J/mol more than to first order.
  check_followed(200188, 0, 65);
}

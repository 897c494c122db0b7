#include <doctest/doctest.h>

#include <cmath>

#include "continuation/solve_line.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/steel.hpp"
#include "internal/soak_problem.hpp"

using namespace gibbsteel;
using internal::LinePoint;
using internal::SoakProblem;

namespace {

Steel high_speed() {
  return Steel({{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}});
}

std::vector<LinePoint> heated(const SoakProblem& problem, double from, double to,
                              double step) {
  std::vector<LinePoint> points;
  for (double celsius = from; celsius <= to; celsius += step)
    points.push_back({Temperature::celsius(celsius), problem.mole_fractions});
  return points;
}

std::vector<Equilibrium> solved(const SoakProblem& problem,
                                const std::vector<LinePoint>& points,
                                internal::LineCounts* counts = nullptr) {
  std::vector<Equilibrium> results;
  const auto all = internal::solve_line(problem.system, {}, points,
                                        [&](std::size_t, Equilibrium&& result) {
                                          results.push_back(std::move(result));
                                          return true;
                                        });
  if (counts) *counts = all;
  return results;
}

void check_same(const Equilibrium& followed, const Equilibrium& cold) {
  REQUIRE(followed.report.usable());
  CHECK(followed.gibbs_energy == doctest::Approx(cold.gibbs_energy).epsilon(1e-12));
  REQUIRE(followed.present.size() == cold.present.size());
  for (std::size_t f = 0; f < cold.present.size(); ++f) {
    CHECK(followed.present[f].phase == cold.present[f].phase);
    CHECK(followed.present[f].amount ==
          doctest::Approx(cold.present[f].amount).epsilon(1e-8));
  }
  for (std::size_t e = 0; e < cold.chemical_potential.size(); ++e)
    CHECK(followed.chemical_potential[e] ==
          doctest::Approx(cold.chemical_potential[e]).epsilon(1e-9));
  REQUIRE(followed.absent.size() == cold.absent.size());
  for (std::size_t k = 0; k < cold.absent.size(); ++k) {
    CHECK(followed.absent[k].phase == cold.absent[k].phase);
    CHECK(followed.absent[k].driving_force ==
          doctest::Approx(cold.absent[k].driving_force).epsilon(1e-4));
  }
}

}  // namespace

TEST_CASE("a heated line through phase changes is what cold soaks give") {
  const SoakProblem problem(high_speed(), {});
  const auto points = heated(problem, 780, 1250, 5);
  internal::LineCounts counts;
  const auto results = solved(problem, points, &counts);
  REQUIRE(results.size() == points.size());
  for (std::size_t i = 0; i < points.size(); i += 7) {
    INFO(points[i].temperature.in_celsius());
    check_same(results[i], problem.solve(points[i].temperature));
  }
  CHECK(counts.points == static_cast<long>(points.size()));
  CHECK(counts.events > 0);
  CHECK(counts.cold <= 3);
}

TEST_CASE(
    "results may be moved from, or left: those of the next stretch are the same") {
  const SoakProblem problem(high_speed(), {});
  const auto points = heated(problem, 1000, 1100, 0.5);  // more than one stretch
  const auto moved = solved(problem, points);
  internal::solve_line(problem.system, {}, points, [&](std::size_t i, Equilibrium&& r) {
    INFO(i);
    CHECK(r.gibbs_energy == moved[i].gibbs_energy);
    CHECK(r.report.brief() == moved[i].report.brief());
    CHECK(r.report.condition_number == moved[i].report.condition_number);
    CHECK(r.chemical_potential == moved[i].chemical_potential);
    REQUIRE(r.present.size() == moved[i].present.size());
    for (std::size_t f = 0; f < r.present.size(); ++f)
      CHECK(r.present[f].y == moved[i].present[f].y);
    REQUIRE(r.absent.size() == moved[i].absent.size());
    for (std::size_t k = 0; k < r.absent.size(); ++k) {
      CHECK(r.absent[k].y == moved[i].absent[k].y);
      CHECK(r.absent[k].driving_force == moved[i].absent[k].driving_force);
    }
    return true;
  });
}

TEST_CASE("condition numbers may be left out: all else is the same") {
  const SoakProblem problem(high_speed(), {});
  const auto points = heated(problem, 1000, 1040, 0.5);
  const auto whole = solved(problem, points);
  int left_out = 0;
  internal::solve_line(
      problem.system, {}, points,
      [&](std::size_t i, Equilibrium&& r) {
        INFO(i);
        CHECK(std::isfinite(whole[i].report.condition_number));
        left_out += std::isnan(r.report.condition_number) ? 1 : 0;
        CHECK(r.report.certificate == whole[i].report.certificate);
        CHECK(r.gibbs_energy == whole[i].gibbs_energy);
        CHECK(r.chemical_potential == whole[i].chemical_potential);
        REQUIRE(r.absent.size() == whole[i].absent.size());
        for (std::size_t k = 0; k < r.absent.size(); ++k)
          CHECK(r.absent[k].driving_force == whole[i].absent[k].driving_force);
        return true;
      },
      internal::ConditionNumbers::left_out);
  CHECK(left_out == static_cast<int>(points.size()) - 1);  // the first one is cold
}

TEST_CASE("the first point and the anchors say many starts, the others followed") {
  const SoakProblem problem(high_speed(), {});
  const auto results = solved(problem, heated(problem, 1000, 1100, 5));
  CHECK(results.front().report.certificate == Certificate::many_starts);
  CHECK(results.back().report.certificate == Certificate::many_starts);
  CHECK(results[2].report.certificate == Certificate::followed);
  CHECK(to_string(results[2].report.certificate) == "followed");
  for (const Equilibrium& result : results) {
    CHECK(result.report.usable());
    CHECK(result.report.lowest_absent >= -1e-3);
  }
}

TEST_CASE("a point far from the last is solved cold, with the bits of a soak alone") {
  const SoakProblem problem(high_speed(), {});
  const std::vector<LinePoint> points{
      {Temperature::celsius(800), problem.mole_fractions},
      {Temperature::celsius(1200), problem.mole_fractions}};
  const auto results = solved(problem, points);
  for (std::size_t i = 0; i < points.size(); ++i)
    CHECK(results[i].gibbs_energy == problem.solve(points[i].temperature).gibbs_energy);
}

TEST_CASE("the order in which points come back, and an early end") {
  const SoakProblem problem(high_speed(), {});
  const auto points = heated(problem, 1000, 1200, 2);
  std::size_t seen = 0;
  internal::solve_line(problem.system, {}, points, [&](std::size_t i, Equilibrium&&) {
    CHECK(i == seen++);
    return seen < 10;
  });
  CHECK(seen == 10);
}

TEST_CASE("without any phase every point says so") {
  const auto set = default_parameters();
  const std::vector<std::string> elements{"Fe", "C"};
  const PhaseSystem system(set, elements, std::vector<std::string>{});
  const std::vector<LinePoint> points(3, {Temperature::celsius(900), {0.9, 0.1}});
  std::size_t seen = 0;
  internal::solve_line(system, {}, points, [&](std::size_t, Equilibrium&& result) {
    CHECK(result.report.status == SolveStatus::infeasible);
    ++seen;
    return true;
  });
  CHECK(seen == 3);
}

TEST_CASE("a sweep's soak has the numbers of a soak alone") {
  const Steel steel = high_speed();
  std::vector<Temperature> temperatures;
  for (int celsius = 1000; celsius <= 1200; celsius += 10)
    temperatures.push_back(Temperature::celsius(celsius));
  const Sweep sweep = steel.sweep(temperatures);
  for (std::size_t i = 0; i < temperatures.size(); i += 5) {
    const State alone = steel.soak(temperatures[i]);
    const State& swept = sweep.states[i];
    CHECK(swept.carbide_volume_percent ==
          doctest::Approx(alone.carbide_volume_percent).epsilon(1e-8));
    CHECK(swept.matrix.weight_percent["C"] ==
          doctest::Approx(alone.matrix.weight_percent["C"]).epsilon(1e-8));
    CHECK(swept.warnings == alone.warnings);
    for (const auto& [kind, force] : alone.driving_force)
      CHECK(swept.driving_force[kind] == doctest::Approx(force).epsilon(1e-4));
  }
}

/// Line 9 of the long run (tests/long): with more vanadium a second, chromium-rich
/// ferrite appears of which no trace exists before, and the line cannot be followed to
/// the next point. What was followed since the last anchor had kept one ferrite.
TEST_CASE("points before a cold one do not stand without an anchor of their own") {
  const Steel steel({{"Mn", 0.614},
                     {"Mo", 4.815},
                     {"Co", 3.337},
                     {"Si", 1.228},
                     {"Ni", 0.1198},
                     {"Cr", 18.5},
                     {"C", 1.606},
                     {"V", 8.0}});
  const SoakProblem problem(steel, {});
  std::vector<LinePoint> points;
  for (int k = 70; k < 90; ++k) {
    const SoakProblem other(steel.changed({{"V", 0.101 * k}}), {});
    points.push_back({Temperature::celsius(735.307), other.mole_fractions});
  }
  const auto results = solved(problem, points);
  REQUIRE(results.size() == points.size());
  for (std::size_t k = 0; k < points.size(); ++k) {
    CAPTURE(k);
    const auto cold =
        minimize(problem.system, points[k].temperature, points[k].mole_fractions);
    CHECK(std::abs(results[k].gibbs_energy - cold.gibbs_energy) < 1e-3);
    CHECK(results[k].present.size() == cold.present.size());
  }
}

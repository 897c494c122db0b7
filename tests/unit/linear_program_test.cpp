/// The linear program against its own proof of optimality: a feasible mixture and
/// potentials that price no column below zero, with equal energies (LP duality).

#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "minimizer/linear_program.hpp"

using namespace gibbsteel::internal;

namespace {

/// One sublattice with one constituent per element: site fractions are the composition.
struct Problem {
  explicit Problem(std::size_t elements) : pool(elements) {
    phase.first = {0, elements};
    for (std::size_t e = 0; e < elements; ++e) {
      phase.constituents.push_back({"", 0, static_cast<int>(e)});
      phase.sites.push_back(1.0);
    }
    conditions.overall.assign(elements, 1.0 / static_cast<double>(elements));
    conditions.phases.push_back({&phase, {}});
  }
  void add(const std::vector<double>& x, double energy) {
    pool.add(conditions, 0, x.data(), energy);
  }
  CompiledPhase phase;
  Conditions conditions;
  ColumnPool pool;
};

void check_optimal(const Problem& p) {
  LinearProgram program(p.conditions.overall);
  REQUIRE(program.solve(p.pool));
  REQUIRE_FALSE(program.infeasible());
  const auto mu = program.potentials();
  double lowest = 0.0, primal = 0.0, dual = 0.0;
  AlignedNumbers memory;
  for (const double d : p.pool.distances(mu, memory)) lowest = std::min(lowest, d);
  CHECK(lowest > -1e-5);
  std::vector<double> sum(mu.size(), 0.0);
  for (const auto& [column, amount] : program.basis()) {
    CHECK(amount >= 0.0);
    primal += amount * p.pool.energy(column);
    for (std::size_t e = 0; e < sum.size(); ++e)
      sum[e] += amount * p.pool.composition(column)[e];
  }
  for (std::size_t e = 0; e < sum.size(); ++e) {
    CHECK(sum[e] == doctest::Approx(p.conditions.overall[e]).epsilon(1e-6));
    dual += mu[e] * p.conditions.overall[e];
  }
  CHECK(primal == doctest::Approx(dual).epsilon(1e-6).scale(1e4));
}

}  // namespace

TEST_CASE("random programs are solved to proven optimality") {
  std::mt19937_64 random(31);
  std::gamma_distribution<double> gamma(0.5, 1.0);
  std::uniform_real_distribution<double> energy(-1e5, 0.0);
  for (int k = 0; k < 300; ++k) {
    CAPTURE(k);
    const std::size_t elements = 2 + static_cast<std::size_t>(k % 9);
    Problem p(elements);
    for (std::size_t e = 0; e < elements; ++e) {
      std::vector<double> pure(elements, 0.0);
      pure[e] = 1.0;
      p.add(pure, 0.0);
    }
    for (int c = 0; c < 250; ++c) {
      std::vector<double> x(elements);
      double sum = 0.0;
      for (double& value : x) sum += value = gamma(random);
      for (double& value : x) value /= sum;
      p.add(x, energy(random));
    }
    check_optimal(p);
  }
}

TEST_CASE(
    "degenerate programs do not cycle: columns equal to the overall composition") {
  std::mt19937_64 random(37);
  std::uniform_real_distribution<double> energy(-1e5, 0.0);
  for (int k = 0; k < 100; ++k) {
    CAPTURE(k);
    const std::size_t elements = 3 + static_cast<std::size_t>(k % 8);
    Problem p(elements);
    for (std::size_t e = 0; e < elements; ++e) {
      std::vector<double> pure(elements, 0.0);
      pure[e] = 1.0;
      p.add(pure, energy(random));
    }
    for (int c = 0; c < 60; ++c) p.add(p.conditions.overall, energy(random));
    for (std::size_t a = 0; a < elements; ++a)
      for (std::size_t b = 0; b < a; ++b) {
        std::vector<double> x(p.conditions.overall);
        const double move = 0.5 * x[a];
        x[a] -= move;
        x[b] += move;
        p.add(x, energy(random));
      }
    check_optimal(p);
  }
}

TEST_CASE("a composition outside all mixtures is infeasible") {
  Problem p(3);
  p.add({0.5, 0.5, 0.0}, -1000.0);
  p.add({0.9, 0.1, 0.0}, -2000.0);
  LinearProgram program(p.conditions.overall);
  CHECK(program.solve(p.pool));
  CHECK(program.infeasible());
}

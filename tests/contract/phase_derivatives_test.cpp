/// Derivatives of every phase of every shipped file against 50-digit central
/// differences of an independent formulation (reference_energy.hpp).

#include <doctest/doctest.h>

#include <cmath>

#include "phase_contract.hpp"
#include "reference_energy.hpp"

using namespace gibbsteel;
using oracle::Real;

namespace {

constexpr int kPoints = 6;
const Real kStep{"1e-14"};  // differences are then exact to about 1e-28

struct Point {
  const ParameterSet& set;
  const Phase& phase;
  const PhaseModel& model;
  std::vector<Real> y;
  Real t;

  Real energy() const { return oracle::energy(set, phase, model, y, t); }
  Real energy_at(std::size_t i, const Real& di, std::size_t j, const Real& dj) const {
    Point moved = *this;
    moved.y[i] += di;
    moved.y[j] += dj;
    return moved.energy();
  }
  Real energy_at(const Real& dt, std::size_t i, const Real& di) const {
    Point moved = *this;
    moved.t += dt;
    moved.y[i] += di;
    return moved.energy();
  }
};

/// Agreement to a few roundings of the largest number that enters.
void check_close(double computed, const Real& expected, double scale) {
  const double error = std::abs(static_cast<double>(Real(computed) - expected));
  CHECK(error <= 1e-12 * std::max(scale, std::abs(computed)));
}

/// Curie temperatures where the second derivative jumps are of measure zero at random
/// points; see the test of the branch point in magnetic_energy_test.cpp.
template <typename Check>
void at_random_points(const Check& check) {
  contract::for_every_phase(
      [&](const ParameterSet& set, const Phase& phase, const PhaseModel& model) {
        std::mt19937_64 random(20261125);
        std::uniform_real_distribution<double> kelvin(150.0, 1550.0);
        for (int k = 0; k < kPoints; ++k) {
          CAPTURE(phase.name);
          CAPTURE(k);
          const auto y = contract::random_fractions(model, random);
          const double t = kelvin(random);
          const Point point{set, phase, model, {y.begin(), y.end()}, t};
          check(point, model.evaluate(Temperature::kelvin(t), y), y);
        }
      });
}

}  // namespace

TEST_CASE("the points reach both branches of the magnetic series, and both signs") {
  int ordered = 0, disordered = 0, negative = 0;
  at_random_points([&](const Point& p, const PhaseDerivatives&, const auto& y) {
    const double curie = p.model.curie_temperature(y);
    if (curie <= 0.0) return;
    ++(static_cast<double>(p.t) < curie ? ordered : disordered);
    const oracle::Fractions fractions(p.model, p.y);
    negative += oracle::sum_of(p.set, p.phase.curie_temperature, fractions, p.t) < 0;
  });
  CHECK(ordered >= 3);
  CHECK(disordered >= 3);
  CHECK(negative >= 3);
}

TEST_CASE("every phase: value agrees with 50 digits") {
  at_random_points([](const Point& p, const PhaseDerivatives& d, const auto&) {
    check_close(d.value, p.energy(), 1e5);
  });
}

TEST_CASE("every phase: gradient agrees with 50-digit differences") {
  at_random_points([](const Point& p, const PhaseDerivatives& d, const auto& y) {
    for (std::size_t i = 0; i < y.size(); ++i)
      check_close(
          d.dy[i],
          (p.energy_at(i, kStep, i, 0) - p.energy_at(i, -kStep, i, 0)) / (2 * kStep),
          1e6);
  });
}

TEST_CASE("every phase: Hessian agrees with 50-digit differences and is symmetric") {
  at_random_points([](const Point& p, const PhaseDerivatives& d, const auto& y) {
    const std::size_t n = y.size();
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = i; j < n; ++j) {
        const Real expected =
            (p.energy_at(i, kStep, j, kStep) - p.energy_at(i, kStep, j, -kStep) -
             p.energy_at(i, -kStep, j, kStep) + p.energy_at(i, -kStep, j, -kStep)) /
            (4 * kStep * kStep);
        check_close(d.dy2[i * n + j], expected, 1e7);
        CHECK(d.dy2[i * n + j] == d.dy2[j * n + i]);
      }
  });
}

TEST_CASE("every phase: temperature derivatives agree with 50-digit differences") {
  at_random_points([](const Point& p, const PhaseDerivatives& d, const auto& y) {
    const Real h("1e-10");
    const Real up = p.energy_at(h, 0, 0), down = p.energy_at(-h, 0, 0);
    check_close(d.dt, (up - down) / (2 * h), 1e3);
    check_close(d.dt2, (up - 2 * p.energy() + down) / (h * h), 1.0);
    for (std::size_t i = 0; i < y.size(); ++i) {
      const Real expected = (p.energy_at(h, i, kStep) - p.energy_at(h, i, -kStep) -
                             p.energy_at(-h, i, kStep) + p.energy_at(-h, i, -kStep)) /
                            (4 * h * kStep);
      check_close(d.dydt[i], expected, 1e3);
    }
  });
}

/// Enclosures of the proof on every phase of every shipped file: random boxes, and in
/// each random points at which the compiled energy, written down once more in 50
/// digits, and its differences must lie inside. Coefficients are those of the compiled
/// phase in double precision, which the proof takes as exact.

#include <doctest/doctest.h>

#include "phase_contract.hpp"
#include "proof/enclosure.hpp"
#include "reference_energy.hpp"

using namespace gibbsteel;
using namespace gibbsteel::internal;
using oracle::Real;

namespace {

constexpr int kBoxes = 8, kPoints = 3;
const Real kStep{"1e-14"};

Real polynomial(const Polynomial& p, const std::vector<double>& c,
                const std::vector<Real>& y) {
  Real sum = 0;
  for (const TermGroup& g : p.groups) {
    Real product = 1, mixed = 0;
    for (std::size_t k = 0; k < g.single_count; ++k) product *= y[g.single[k]];
    const auto at = [&](std::size_t k) { return y[g.mixed[k]]; };
    const double* first = &c[g.first_coefficient];
    if (g.mixing == Mixing::none) mixed = first[0];
    if (g.mixing == Mixing::reciprocal)
      mixed = first[0] * at(0) * at(1) * at(2) * at(3);
    for (std::size_t n = 0; n < g.coefficient_count; ++n) {
      if (g.mixing == Mixing::binary)
        mixed += first[n] * at(0) * at(1) * pow(Real(at(0) - at(1)), n);
      if (g.mixing == Mixing::ternary)
        mixed += first[n] * at(0) * at(1) * at(2) *
                 (at(n) + (1 - at(0) - at(1) - at(2)) / 3);
    }
    sum += mixed * product;
  }
  return sum;
}

Real magnetic(const CompiledPhase& phase, double kelvin, const std::vector<Real>& y) {
  if (phase.structure_factor <= 0.0) return 0;
  const auto effective = [&](const Polynomial& p, const std::vector<double>& c) {
    const Real raw = polynomial(p, c, y);
    return raw >= 0 ? raw : Real(-raw / phase.negative_value_divisor);
  };
  const Real curie = effective(phase.curie, phase.curie_coefficients);
  const Real moment = effective(phase.moment, phase.moment_coefficients);
  if (curie == 0) return 0;
  return oracle::magnetic_energy(Real(kelvin), curie, moment,
                                 Real(phase.structure_factor));
}

struct Case {
  const CompiledPhase& phase;
  const PhaseCoefficients& at;
  Real energy(const std::vector<Real>& y) const {
    return polynomial(phase.energy.polynomial, at.value, y) +
           magnetic(phase, at.kelvin, y);
  }
  Real moved(std::vector<Real> y, std::size_t i, const Real& di, std::size_t j,
             const Real& dj) const {
    y[i] += di;
    y[j] += dj;
    return energy(y);
  }
  Real slope(const std::vector<Real>& y, std::size_t i) const {
    return (moved(y, i, kStep, i, 0) - moved(y, i, -kStep, i, 0)) / (2 * kStep);
  }
  Real curvature(const std::vector<Real>& y, std::size_t i, std::size_t j) const {
    return (moved(y, i, kStep, j, kStep) - moved(y, i, kStep, j, -kStep) -
            moved(y, i, -kStep, j, kStep) + moved(y, i, -kStep, j, -kStep)) /
           (4 * kStep * kStep);
  }
};

/// Differences err by about 1e-20 of the largest number; enclosures are wider by far.
bool holds(const Interval& enclosure, const Real& value) {
  const Real slack("1e-14");
  return Real(enclosure.lo) - slack <= value && value <= Real(enclosure.hi) + slack;
}

Box box_around(const std::vector<double>& y, double reach, std::mt19937_64& random) {
  std::uniform_real_distribution<double> u(0.0, reach);
  Box box;
  for (const double v : y)
    box.push_back({std::max(0.0, v - u(random)), std::min(1.0, v + u(random))});
  return box;
}

void check_box(const Case& c, EnergyEnclosure& energy, const Box& box,
               std::mt19937_64& random) {
  const std::size_t n = c.phase.size();
  Enclosure over, at;
  energy.over(box, over);
  std::uniform_real_distribution<double> u(0.01, 0.99);
  for (int k = 0; k < kPoints; ++k) {
    std::vector<Real> y;
    Box thin;
    for (const Interval& v : box) {
      y.push_back(Real(v.lo + u(random) * (v.hi - v.lo)));
      thin.push_back(exactly(static_cast<double>(y.back())));
    }
    energy.at(thin, false, at);
    CHECK(holds(at.value, c.energy(y)));
    CHECK(at.value.width() < 1e-6);
    for (std::size_t i = 0; i < n; ++i) {
      CHECK(holds(at.gradient[i], c.slope(y, i)));
      if (over.kink) continue;
      for (std::size_t j = i; j < n; j += 1 + n / 4)
        CHECK(holds(over.hessian[i * n + j], c.curvature(y, i, j)));
    }
    if (!over.kink) continue;
    CHECK(holds(over.kink_value, magnetic(c.phase, c.at.kelvin, y)));
  }
}

}  // namespace

TEST_CASE("enclosures hold value, slopes and curvature everywhere in a box") {
  contract::for_every_phase(
      [&](const ParameterSet&, const Phase& phase, const PhaseModel& model) {
        CAPTURE(phase.name);
        std::mt19937_64 random(20261125);
        std::uniform_real_distribution<double> kelvin(600.0, 1550.0);
        for (int k = 0; k < kBoxes; ++k) {
          const double t = kelvin(random);
          std::vector<TemperatureValue> curves(model.curves().size());
          const TemperaturePowers powers(t);
          model.curves().evaluate(powers, curves);
          Candidate candidate{&model.compiled(), {}};
          candidate.at.refresh(model.compiled(), powers, curves);
          EnergyEnclosure energy(candidate);
          const auto y = contract::random_fractions(model, random);
          const double reach = k % 2 == 0 ? 0.3 : 0.01;
          check_box({model.compiled(), candidate.at}, energy,
                    box_around(y, reach, random), random);
        }
      });
}

#include "continuation/tracked_minimum.hpp"

#include <cmath>

namespace gibbsteel::internal {
namespace {

constexpr double kSafety = 4.0;         ///< times the first-order change
constexpr double kMargin = 2.0;         ///< [J/mol of atoms]
constexpr double kHeatCapacity = 30.0;  ///< most that two phases differ by [J/mol/K]
constexpr double kNear = 50.0;          ///< [J/mol of atoms]: every digit counts below

/// D per mole of atoms where the number of atoms depends on y: D at potentials raised
/// by d, repeated until d stays (as polish() of the certificate does).
template <class Descend>
void sharpen(std::span<const double> mu, TrackedMinimum& m, const Descend& descend_at) {
  std::vector<double> raised(mu.begin(), mu.end());
  for (int pass = 0; pass < 8; ++pass) {
    for (std::size_t e = 0; e < raised.size(); ++e) raised[e] = mu[e] + m.d;
    const DescentResult result = descend_at(raised, DescentLimits{200, 1e-8});
    m.converged = result.converged;
    const double change = result.d_per_atom();
    m.d += change;
    if (!(std::abs(change) > 1e-6)) break;
  }
}

/// To the last digits near the plane, roughly far above it.
template <class Descend>
void descend_to(std::span<const double> mu, TrackedMinimum& m,
                const Descend& descend_at) {
  const DescentResult result = descend_at(mu, DescentLimits{60, 1e-2});
  m.d = result.d_per_atom();
  m.converged = result.converged;
  if (!m.converged || !(m.d > kNear)) sharpen(mu, m, descend_at);
}

void keep_slopes(const Conditions& conditions, std::span<const double> mu,
                 TrackedMinimum& m) {
  const Candidate& candidate = conditions.phases[m.phase];
  const double all = atoms(*candidate.phase, m.y.data());
  m.kelvin = conditions.kelvin;
  m.mu.assign(mu.begin(), mu.end());
  m.composition.assign(mu.size(), 0.0);
  add_atoms(*candidate.phase, m.y.data(), 1.0 / all, m.composition.data());
  m.per_kelvin =
      temperature_slopes(*candidate.phase, candidate.at, m.y.data(), nullptr).dt / all;
}

}  // namespace

/// Eq. (C1)
double TrackedMinimum::change(double to_kelvin,
                              std::span<const double> to_mu) const noexcept {
  double sum = per_kelvin * (to_kelvin - kelvin);
  for (std::size_t e = 0; e < composition.size(); ++e)
    sum -= composition[e] * (to_mu[e] - mu[e]);
  return sum;
}

/// What the first order leaves out: half the variance of the changes of potentials over
/// R T, as in ideal mixing, and half the difference of heat capacities over T; twice of
/// both.
double TrackedMinimum::beyond_first_order(
    double to_kelvin, std::span<const double> to_mu) const noexcept {
  double mean = 0.0, squares = 0.0;
  for (std::size_t e = 0; e < composition.size(); ++e) {
    const double step = to_mu[e] - mu[e];
    mean += composition[e] * step;
    squares += composition[e] * step * step;
  }
  const double rt = kGasConstant * to_kelvin, warmer = to_kelvin - kelvin;
  return (squares - mean * mean) / rt + kHeatCapacity * warmer * warmer / to_kelvin;
}

bool TrackedMinimum::far_above(double to_kelvin,
                               std::span<const double> to_mu) const noexcept {
  return d - kSafety * std::abs(change(to_kelvin, to_mu)) -
             beyond_first_order(to_kelvin, to_mu) >
         kMargin;  // false for NaN
}

void evaluate(Conditions& conditions, std::span<const double> mu, DescentMemory& memory,
              TrackedMinimum& m) {
  const Candidate& candidate = conditions.phases[m.phase];
  descend_to(
      mu, m, [&](std::span<const double> potentials, const DescentLimits& limits) {
        return descend(conditions, candidate, potentials, limits, memory, m.y.data());
      });
  keep_slopes(conditions, mu, m);
}

void evaluate_fully(Conditions& conditions, std::span<const double> mu,
                    ResumedDescent& descent, TrackedMinimum& m) {
  descent.begin(conditions, conditions.phases[m.phase], m.y.data());
  const auto descend_at = [&](std::span<const double> potentials,
                              const DescentLimits& limits) {
    return descent.to_minimum(potentials, limits);
  };
  descend_to(mu, m, descend_at);
  if (m.d > kNear) sharpen(mu, m, descend_at);
  keep_slopes(conditions, mu, m);
}

}  // namespace gibbsteel::internal

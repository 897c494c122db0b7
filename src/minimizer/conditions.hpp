#pragma once
/// One minimization problem as the parts of the minimizer see it.

#include <span>
#include <vector>

#include "gibbsteel/phase_system.hpp"
#include "gibbsteel/units.hpp"
#include "internal/phase_kernel.hpp"

namespace gibbsteel::internal {

/// A phase with its coefficients at the temperature of the problem.
struct Candidate {
  const CompiledPhase* phase = nullptr;
  PhaseCoefficients at;
  std::size_t size() const noexcept { return phase->size(); }
};

struct Conditions {
  double kelvin = 0.0;
  double rt = 0.0;              ///< [J/mol]
  std::vector<double> overall;  ///< mole fractions b, each > 0, sum 1
  std::vector<Candidate> phases;
  int evaluations = 0;  ///< Hessian evaluations so far

  std::size_t elements() const noexcept { return overall.size(); }
};

/// All phases of a system at one temperature. They are referred to: keep it alive.
/// @param x  mole fractions, normalized here
Conditions conditions_of(const PhaseSystem& system, Temperature t,
                         std::span<const double> x);

/// Atoms of each element per formula unit, M(y). @param out length elements
inline void add_atoms(const CompiledPhase& phase, const double* y, double factor,
                      double* out) noexcept {
  for (std::size_t i = 0; i < phase.size(); ++i) {
    const int element = phase.constituents[i].element;
    if (element >= 0) out[element] += factor * phase.sites[i] * y[i];
  }
}

/// Atoms per formula unit.
inline double atoms(const CompiledPhase& phase, const double* y) noexcept {
  double sum = 0.0;
  for (std::size_t i = 0; i < phase.size(); ++i)
    if (phase.constituents[i].element >= 0) sum += phase.sites[i] * y[i];
  return sum;
}

/// w_i with mu . M(y) = w . y.
inline void plane_weights(const CompiledPhase& phase, std::span<const double> mu,
                          double* w) noexcept {
  for (std::size_t i = 0; i < phase.size(); ++i) {
    const int element = phase.constituents[i].element;
    w[i] = element < 0 ? 0.0 : phase.sites[i] * mu[static_cast<std::size_t>(element)];
  }
}

/// Largest difference of site fractions.
inline double distance(std::span<const double> a, std::span<const double> b) noexcept {
  double largest = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i)
    largest = std::max(largest, a[i] > b[i] ? a[i] - b[i] : b[i] - a[i]);
  return largest;
}

}  // namespace gibbsteel::internal

#pragma once
/// A local minimum of D of a phase that is not present, followed along a line of
/// conditions.

#include <span>
#include <vector>

#include "continuation/resumed_descent.hpp"
#include "minimizer/phase_minimum.hpp"
#include "minimizer/phase_sets.hpp"

namespace gibbsteel::internal {

/// Where D was known last, and its slopes there: D* of a phase is a minimum over y of
/// functions that are linear in the potentials, so dD*/dmu = -M(y*), dD*/dT = -S(y*)
/// (envelope theorem).                                                       Eq. (C1)
struct TrackedMinimum {
  std::size_t phase = 0;
  std::vector<double> y;
  double d = 0.0;                   ///< [J/mol of atoms] when last evaluated
  double kelvin = 0.0;              ///< where that was
  std::vector<double> mu;           ///< [J/mol]
  std::vector<double> composition;  ///< atoms of each element per mole of atoms
  double per_kelvin = 0.0;          ///< dG/dT [J/(K mol of atoms)]
  bool converged = false;

  /// First-order change of D from where it was evaluated [J/mol of atoms], Eq. (C1).
  double change(double to_kelvin, std::span<const double> to_mu) const noexcept;
  /// Twice what the second order takes off D by a rule of thumb [J/mol of atoms].
  double beyond_first_order(double to_kelvin,
                            std::span<const double> to_mu) const noexcept;
  /// True when D cannot have come near 0: the first-order change, taken `kSafety`
  /// times, and what lies beyond it leave it positive.
  bool far_above(double to_kelvin, std::span<const double> to_mu) const noexcept;
};

/// Descends from y at these conditions and potentials, and keeps where that was: to the
/// last digits near the plane, roughly far above it.
void evaluate(Conditions& conditions, std::span<const double> mu, DescentMemory& memory,
              TrackedMinimum& minimum);
/// The same to the last digits wherever it is.
void evaluate_fully(Conditions& conditions, std::span<const double> mu,
                    ResumedDescent& descent, TrackedMinimum& minimum);

}  // namespace gibbsteel::internal

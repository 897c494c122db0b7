#pragma once
/// Local minimum of D(y) = G(y) - mu . M(y) of one phase at fixed chemical potentials:
/// damped Newton in scaled variables, descending at every step.

#include <limits>

#include "minimizer/tangent_step.hpp"

namespace gibbsteel::internal {

struct DescentLimits {
  int steps = 40;
  double tolerance = 1e-9;  ///< predicted decrease [J/mol of formula units]
  /// Stop once D is clearly positive: the predicted decrease is a small part of it.
  bool stop_when_positive = false;
  /// Stop where D cannot fall to this [J/mol of formula units] by what convex ideal
  /// mixing allows: it falls by no more than the Newton decrement while that is below
  /// 0.46 R T. Infinite: not asked.
  double enough = std::numeric_limits<double>::infinity();
};

struct DescentResult {
  double d = 0.0;       ///< D [J/mol of formula units]
  double energy = 0.0;  ///< G [J/mol of formula units]
  double atoms = 0.0;   ///< per formula unit
  bool converged = false;
  bool stopped_above = false;  ///< D stays above `enough`
  double d_per_atom() const noexcept { return d / atoms; }
};

/// Multiplicative update that keeps y > 0 and the sums of the sublattices: y (1 + r)
/// for small r = dy/y, exponential for a large r of a dilute constituent and where
/// r < -1/2, then renormalized.                                               Eq. (N2)
void update_fractions(const CompiledPhase& phase, const double* y, const double* dy,
                      double fraction, double* out) noexcept;

/// @param y  start on entry (each > 0), minimum on return
DescentResult descend(Conditions& conditions, const Candidate& candidate,
                      std::span<const double> mu, const DescentLimits& limits,
                      TangentStep& step, double* y);

}  // namespace gibbsteel::internal

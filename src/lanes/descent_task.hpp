#pragma once
/// Descents of one phase from several starts, as the lanes take them.

#include <limits>

#include "internal/compiled_phase.hpp"

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

/// One start and where it led.
struct DescentJob {
  double* y = nullptr;  ///< start on entry (each > 0), minimum on return; length n
  double raised = 0.0;  ///< added to every chemical potential [J/mol]
  DescentResult result;
};

struct DescentTask {
  const CompiledPhase* phase = nullptr;
  const PhaseCoefficients* at = nullptr;
  double rt = 0.0;                  ///< [J/mol]
  const double* weights = nullptr;  ///< w with mu . M(y) = w . y, length n
  DescentLimits limits;
  DescentJob* jobs = nullptr;
  std::size_t count = 0;
  double* memory = nullptr;  ///< descent_room() times the lanes, aligned to 64 bytes
  int evaluations = 0;       ///< with Hessian, counted up
};

/// Numbers per lane that a descent needs for n constituents on s sublattices.
inline std::size_t descent_room(std::size_t n, std::size_t s) noexcept {
  return (4 * n + s + 9) * n;
}

}  // namespace gibbsteel::internal

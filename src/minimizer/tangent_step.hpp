#pragma once
/// The inverse Hessian of one phase on the directions that keep the sum of site
/// fractions of every sublattice ("phase matrix" of the two-level scheme), Eq. (N1),
/// and its products with the atoms of the elements.

#include <vector>

#include "lanes/aligned_numbers.hpp"
#include "lanes/lane_kernels.hpp"
#include "lanes/tangent_factor.hpp"
#include "minimizer/conditions.hpp"

namespace gibbsteel::internal {

class TangentStep {
 public:
  /// Reserves memory for phases of up to `constituents` and problems of `elements`.
  TangentStep(std::size_t constituents, std::size_t elements);
  TangentStep(const TangentStep&) = delete;  // factor_ points into memory_
  TangentStep& operator=(const TangentStep&) = delete;
  TangentStep(TangentStep&&) = default;
  TangentStep& operator=(TangentStep&&) = default;
  /// The same later; what is large enough stays. What was factored before is lost.
  void reserve(std::size_t constituents, std::size_t elements);

  /// Factors the Hessian (n x n, row by row) at y.
  /// @return the shift that was needed; 0 when positive definite on the tangent space
  double factor(const CompiledPhase& phase, double rt, const double* y,
                const double* hessian);

  /// direction = -P gradient: the Newton direction. Lengths n.
  void newton_direction(const double* gradient, double* direction) const;

  /// Prepares the columns P A of the atoms A(i, element) of the constituents.
  void project_elements(const CompiledPhase& phase, std::size_t elements);
  /// Adds the lower triangle of n A^T P A to `out`: rows of ElementRows::stride_for(
  /// elements), aligned to 64 bytes; what is above the diagonal means nothing.
  void add_response(double n, double* out) const;
  /// Adds n A^T P v for v of length n to `out` (length elements).
  void add_projected(double n, const double* v, double* out) const;
  /// dy = P (A dmu - excess).
  void response_to(const double* dmu, const double* excess, double* dy) const;

 private:
  one::TangentFactor<double> factor_;
  std::vector<double> memory_;  ///< of factor_
  AlignedNumbers atoms_;        ///< L^-1 D A, projected
  ElementRows rows_;            ///< the same with its shape
  mutable std::vector<double> work_;
  std::size_t n_ = 0, s_ = 0;
};

}  // namespace gibbsteel::internal

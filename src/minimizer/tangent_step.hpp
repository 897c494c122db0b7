#pragma once
/// The inverse Hessian of one phase on the directions that keep the sum of site
/// fractions of every sublattice ("phase matrix" of the two-level scheme), in scaled
/// variables.
///
/// With d_i = sqrt(y_i / (R T a_i)) the ideal part of D H D is the identity, however
/// small y_i is. Multiples of the sublattice directions added to it change nothing on
/// the tangent space and make it factorisable; only when that is not enough the phase
/// is inside a spinodal, and a multiple of the identity is added.              Eq. (N1)

#include <vector>

#include "minimizer/conditions.hpp"

namespace gibbsteel::internal {

class TangentStep {
 public:
  /// Reserves memory for phases of up to `constituents` and problems of `elements`.
  TangentStep(std::size_t constituents, std::size_t elements);
  /// The same later; what is large enough stays.
  void reserve(std::size_t constituents, std::size_t elements);

  /// Factors the Hessian (n x n, row by row) at y.
  /// @return the shift that was needed; 0 when positive definite on the tangent space
  double factor(const CompiledPhase& phase, double rt, const double* y,
                const double* hessian);

  /// direction = -P gradient: the Newton direction. Lengths n.
  void newton_direction(const double* gradient, double* direction) const;

  /// Prepares the columns P A of the atoms A(i, element) of the constituents.
  void project_elements(const CompiledPhase& phase, std::size_t elements);
  /// Adds the lower triangle of n A^T P A (elements x elements, row by row) to `out`.
  void add_response(double n, double* out) const;
  /// Adds n A^T P v for v of length n to `out` (length elements).
  void add_projected(double n, const double* v, double* out) const;
  /// dy = P (A mu - gradient).
  void response_to(const double* mu, const double* gradient, double* dy) const;

 private:
  void orthonormalise_sublattices();
  bool try_factor(double sublattice_weight, double shift);
  void project_out(double* v) const noexcept;

  std::vector<double> scaled_;  ///< D H D, lower triangle by columns
  std::vector<double> lower_;   ///< its factor
  std::vector<double> basis_;   ///< per sublattice: n, orthonormal
  std::vector<double> atoms_;   ///< L^-1 D A, projected: n rows of e
  std::vector<double> d_;
  mutable std::vector<double> work_;
  std::size_t n_ = 0, s_ = 0, e_ = 0;
  const CompiledPhase* phase_ = nullptr;
};

}  // namespace gibbsteel::internal

#pragma once
/// The Hessian of one phase, factored on the directions that keep the sum of site
/// fractions of every sublattice, in scaled variables and in any number type. With
/// d_i = sqrt(y_i / (R T a_i)) the ideal part of D H D is the identity, however small
/// y_i is. Multiples of the sublattice directions added to it change nothing on the
/// tangent space and make it factorisable; only when that is not enough the phase is
/// inside a spinodal, and a multiple of the identity is added.               Eq. (N1)

#include "internal/compiled_phase.hpp"
#include "lanes/small_matrix.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

template <class Real>
class TangentFactor {
 public:
  /// Reals of memory for n constituents on s sublattices.
  static std::size_t room(std::size_t n, std::size_t s) noexcept {
    return (n + s + 1) * n;
  }
  void place(Real* memory, std::size_t n, std::size_t s) noexcept {
    n_ = n;
    s_ = s;
    lower_ = memory;
    basis_ = lower_ + n * n;
    d_ = basis_ + s * n;
  }

  /// Factors the upper triangle of a Hessian (n x n, row by row) at y.
  /// @param wanted  lanes that matter: for the others no shift is looked for
  /// @return the shift that was needed; 0 when positive definite on the tangent space
  Real factor(const CompiledPhase& phase, double rt, const Real* y, const Real* hessian,
              const MaskOf<Real>& wanted) noexcept {
    const Real weight = scale(phase, rt, y, hessian);
    const Real shift = factor_shifted(phase, rt, hessian, weight, wanted);
    orthonormalise_sublattices(phase);
    return shift;
  }

  /// direction = -P gradient: the Newton direction. Lengths n.
  void newton_direction(const Real* gradient, Real* direction) const noexcept {
    for (std::size_t i = 0; i < n_; ++i) direction[i] = -d_[i] * gradient[i];
    solve_lower(lower_, n_, direction);
    project_out(direction);
    solve_upper(lower_, n_, direction);
    for (std::size_t i = 0; i < n_; ++i) direction[i] *= d_[i];
  }

  /// Takes the sublattice directions out of L^-1 D v.
  void project_out(Real* v) const noexcept {
    for (std::size_t s = 0; s < s_; ++s) {
      const Real* q = basis_ + s * n_;
      const Real share = dot(q, v, n_);
      for (std::size_t i = 0; i < n_; ++i) v[i] -= share * q[i];
    }
  }

  const Real* d() const noexcept { return d_; }
  const Real* lower() const noexcept { return lower_; }
  const Real* basis(std::size_t s) const noexcept { return basis_ + s * n_; }

 private:
  /// @return the weight of the sublattice directions
  Real scale(const CompiledPhase& phase, double rt, const Real* y,
             const Real* hessian) noexcept {
    Real largest{};
    for (std::size_t i = 0; i < n_; ++i) {
      d_[i] = square_root(Real(y[i] / (rt * phase.sites[i])));
      largest = larger(largest, magnitude(Real(d_[i] * hessian[i * n_ + i] * d_[i])));
    }
    return 100.0 + 40.0 * largest;
  }

  Real factor_shifted(const CompiledPhase& phase, double rt, const Real* hessian,
                      const Real& weight, const MaskOf<Real>& wanted) noexcept {
    const auto try_factor = [&](const Real& weight_used, const Real& shift_used) {
      fill(phase, rt, hessian, weight_used, shift_used);
      return cholesky(lower_, n_);
    };
    Real used = weight, shift{};
    MaskOf<Real> bad = wanted & !try_factor(used, shift);
    if (!any(bad)) return shift;
    used = bad ? 1000.0 * weight : used;
    bad = wanted & !try_factor(used, shift);
    used = bad ? weight : used;
    shift = bad ? shift + 0.25 : shift;
    while (any(bad)) {  // up to 1e12, which leaves only what is no number
      bad = wanted & !try_factor(used, shift) & (shift < 1e12);
      shift = bad ? 3.0 * shift : shift;
    }
    return shift;
  }

  /// D H D with the sublattice directions and the shift, lower triangle. The length of
  /// D times a sublattice direction is 1 / sqrt(R T a).
  void fill(const CompiledPhase& phase, double rt, const Real* hessian,
            const Real& sublattice_weight, const Real& shift) noexcept {
    for (std::size_t s = 0; s < s_; ++s) {
      const std::size_t end = phase.first[s + 1];
      const Real weight = sublattice_weight * (rt * phase.sites[phase.first[s]]);
      for (std::size_t j = phase.first[s]; j < end; ++j) {
        const Real* row = hessian + j * n_;
        Real* column = lower_ + j * n_;
        for (std::size_t i = j; i < end; ++i)
          column[i] = d_[j] * d_[i] * (row[i] + weight);
        for (std::size_t i = end; i < n_; ++i) column[i] = d_[j] * d_[i] * row[i];
        column[j] += shift;
      }
    }
  }

  /// Orthonormal basis of L^-1 D times the sublattice directions.
  void orthonormalise_sublattices(const CompiledPhase& phase) noexcept {
    for (std::size_t s = 0; s < s_; ++s) {
      const std::size_t begin = phase.first[s], end = phase.first[s + 1];
      Real* q = basis_ + s * n_;
      set_zero(q, n_);
      for (std::size_t i = begin; i < end; ++i) q[i] = d_[i];
      solve_lower(lower_, n_, q, begin);
      for (int pass = 0; pass < 2; ++pass)
        for (std::size_t k = 0; k < s; ++k) {
          const Real* other = basis_ + k * n_;
          const Real share = dot(other, q, n_);
          for (std::size_t i = 0; i < n_; ++i) q[i] -= share * other[i];
        }
      const Real length = 1.0 / square_root(dot(q, q, n_));
      for (std::size_t i = 0; i < n_; ++i) q[i] *= length;
    }
  }

  Real *lower_ = nullptr, *basis_ = nullptr, *d_ = nullptr;
  std::size_t n_ = 0, s_ = 0;
};

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE

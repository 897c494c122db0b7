#pragma once
/// What one phase answers to the potentials of the elements, in vectors along the
/// elements and in any number type: X = L^-1 D A with the sublattice directions taken
/// out, so that A^T P A = X^T X with the phase matrix P of Eq. (N1).

#include "lanes/element_rows_task.hpp"
#include "lanes/real.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

/// Reals that hold all elements.
template <class Real>
std::size_t reals_of(const ElementRows& rows) noexcept {
  constexpr std::size_t kLanes = LaneTraits<Real>::kCount;
  return (rows.elements + kLanes - 1) / kLanes;
}

/// D A -> L^-1 D A, without the sublattice directions.
template <class Real>
void project_rows(const ElementRows& rows) noexcept {
  const std::size_t n = rows.n, stride = rows.stride / LaneTraits<Real>::kCount;
  const double* l = rows.lower;
  for (std::size_t c = 0; c < reals_of<Real>(rows); ++c) {
    Real* x = reinterpret_cast<Real*>(rows.x) + c;
    for (std::size_t i = 0; i < n; ++i) {
      Real value = x[i * stride];
      for (std::size_t k = 0; k < i; ++k) value -= l[k * n + i] * x[k * stride];
      x[i * stride] = value * l[i * n + i];
    }
    for (std::size_t s = 0; s < rows.sublattices; ++s) {
      const double* q = rows.basis + s * n;
      Real share{};
      for (std::size_t i = 0; i < n; ++i) share += q[i] * x[i * stride];
      for (std::size_t i = 0; i < n; ++i) x[i * stride] -= q[i] * share;
    }
  }
}

/// Adds amount X^T X to `out`, elements x stride: the lower triangle, and numbers above
/// it that mean nothing.
template <class Real>
void add_row_products(const ElementRows& rows, double amount, double* out) noexcept {
  constexpr std::size_t kLanes = LaneTraits<Real>::kCount;
  const std::size_t stride = rows.stride / kLanes;
  const Real* x = reinterpret_cast<const Real*>(rows.x);
  Real* sums = reinterpret_cast<Real*>(out);
  for (std::size_t a = 0; a < rows.elements; ++a)
    for (std::size_t c = 0; c <= a / kLanes; ++c) {
      Real sum = sums[a * stride + c];
      for (std::size_t i = 0; i < rows.n; ++i)
        sum += (amount * rows.x[i * rows.stride + a]) * x[i * stride + c];
      sums[a * stride + c] = sum;
    }
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE

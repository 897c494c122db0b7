#pragma once
/// Cholesky factor of a small matrix and its solves in any number type, on caller-owned
/// memory: lower triangle, column by column, leading dimension n; the diagonal of a
/// factor holds the inverse of its entries. Sums are kept in registers.

#include "lanes/real.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

/// A -> L with A = L L^T, in place. @return where it was positive definite
template <class Real>
MaskOf<Real> cholesky(Real* a, std::size_t n) noexcept {
  MaskOf<Real> positive = Real{} < 1.0;
  for (std::size_t k = 0; k < n; ++k) {
    Real* column = a + k * n;
    Real pivot = column[k];
    for (std::size_t j = 0; j < k; ++j) pivot -= a[j * n + k] * a[j * n + k];
    positive &= pivot > 0.0;
    if (!any(positive)) return positive;
    const Real inverse = 1.0 / square_root(pivot);
    column[k] = inverse;
    std::size_t i = k + 1;
    for (; i + 1 < n; i += 2) {  // two at once, for what they share
      Real one = column[i], two = column[i + 1];
      for (std::size_t j = 0; j < k; ++j) {
        const Real* other = a + j * n;
        one -= other[k] * other[i];
        two -= other[k] * other[i + 1];
      }
      column[i] = one * inverse;
      column[i + 1] = two * inverse;
    }
    if (i < n) {
      Real value = column[i];
      for (std::size_t j = 0; j < k; ++j) value -= a[j * n + k] * a[j * n + i];
      column[i] = value * inverse;
    }
  }
  return positive;
}

/// v -> L^-1 v for v that is zero before `first`
template <class Real>
void solve_lower(const Real* l, std::size_t n, Real* v,
                 std::size_t first = 0) noexcept {
  for (std::size_t k = first; k < n; ++k) {
    Real value = v[k];
    for (std::size_t j = first; j < k; ++j) value -= l[j * n + k] * v[j];
    v[k] = value * l[k * n + k];
  }
}

/// v -> L^-T v
template <class Real>
void solve_upper(const Real* l, std::size_t n, Real* v) noexcept {
  for (std::size_t k = n; k-- > 0;) {
    Real value = v[k];
    for (std::size_t i = n; --i > k;) value -= l[k * n + i] * v[i];
    v[k] = value * l[k * n + k];
  }
}

/// In two sums, which do not wait for each other.
template <class Real>
Real dot(const Real* a, const Real* b, std::size_t n) noexcept {
  Real even{}, odd{};
  std::size_t i = 0;
  for (; i + 1 < n; i += 2) {
    even += a[i] * b[i];
    odd += a[i + 1] * b[i + 1];
  }
  if (i < n) even += a[i] * b[i];
  return even + odd;
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE

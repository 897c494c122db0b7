#pragma once
/// Cholesky factor of a small matrix and its solves, on caller-owned memory: lower
/// triangle, column by column, leading dimension n. Inner loops run along columns, so
/// that they need no reordering of sums to be done several entries at a time.

#include <cmath>
#include <cstddef>

namespace gibbsteel::internal {

/// A -> L with A = L L^T, in place. @return false when not positive definite
inline bool cholesky(double* a, std::size_t n) noexcept {
  for (std::size_t k = 0; k < n; ++k) {
    double* column = a + k * n;
    for (std::size_t j = 0; j < k; ++j) {
      const double* other = a + j * n;
      const double factor = other[k];
      for (std::size_t i = k; i < n; ++i) column[i] -= factor * other[i];
    }
    if (!(column[k] > 0.0)) return false;
    column[k] = std::sqrt(column[k]);
    const double inverse = 1.0 / column[k];
    for (std::size_t i = k + 1; i < n; ++i) column[i] *= inverse;
  }
  return true;
}

/// v -> L^-1 v
inline void solve_lower(const double* l, std::size_t n, double* v) noexcept {
  for (std::size_t k = 0; k < n; ++k) {
    const double* column = l + k * n;
    v[k] /= column[k];
    const double value = v[k];
    for (std::size_t i = k + 1; i < n; ++i) v[i] -= column[i] * value;
  }
}

/// v -> L^-T v
inline void solve_upper(const double* l, std::size_t n, double* v) noexcept {
  for (std::size_t k = n; k-- > 0;) {
    const double* column = l + k * n;
    double sum = v[k];
    for (std::size_t i = k + 1; i < n; ++i) sum -= column[i] * v[i];
    v[k] = sum / column[k];
  }
}

/// X -> L^-1 X for X of n rows and `columns` columns, row by row.
inline void solve_lower_rows(const double* l, std::size_t n, double* x,
                             std::size_t columns) noexcept {
  for (std::size_t k = 0; k < n; ++k) {
    const double* column = l + k * n;
    double* row = x + k * columns;
    for (std::size_t c = 0; c < columns; ++c) row[c] /= column[k];
    for (std::size_t i = k + 1; i < n; ++i) {
      const double factor = column[i];
      double* below = x + i * columns;
      for (std::size_t c = 0; c < columns; ++c) below[c] -= factor * row[c];
    }
  }
}

inline double dot(const double* a, const double* b, std::size_t n) noexcept {
  double sum = 0.0;
  for (std::size_t i = 0; i < n; ++i) sum += a[i] * b[i];
  return sum;
}

}  // namespace gibbsteel::internal

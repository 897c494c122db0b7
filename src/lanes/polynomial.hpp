#pragma once
/// The polynomials in site fractions of Eq. (G1) to (G4) in any number type: value,
/// gradient and upper triangle of the Hessian on caller-owned memory.

#include <algorithm>

#include "lanes/mixing_parts.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

/// Where derivatives are added. The Hessian receives the upper triangle only (row <=
/// column).
template <class Real>
struct SlopesOf {
  Real* gradient = nullptr;  ///< length n, never null
  Real* hessian = nullptr;   ///< n x n, row by row, or null: not wanted
  std::size_t n = 0;
};

/// Product of the single site fractions but those at positions `skip1` and `skip2`.
template <class Real>
Real product_without(const TermGroup& g, const Real* y, int skip1, int skip2) noexcept {
  Real product = Real{} + 1.0;
  for (int k = 0; k < g.single_count; ++k)
    if (k != skip1 && k != skip2) product *= y[g.single[static_cast<std::size_t>(k)]];
  return product;
}

template <class Real>
void add_at(const SlopesOf<Real>& out, std::uint16_t i, std::uint16_t j,
            const Real& value) noexcept {
  const std::size_t row = std::min(i, j), column = std::max(i, j);
  out.hessian[row * out.n + column] += value;
}

template <class Real>
void add_hessian(const TermGroup& g, const MixingPart<Real>& part, const Real* y,
                 const Real& product, const SlopesOf<Real>& out) noexcept {
  for (int i = 0; i < part.count; ++i)
    for (int j = i; j < part.count; ++j)
      add_at(out, g.mixed[static_cast<std::size_t>(i)],
             g.mixed[static_cast<std::size_t>(j)], Real(part.hessian[i][j] * product));
  for (int a = 0; a < g.single_count; ++a) {
    const auto ia = g.single[static_cast<std::size_t>(a)];
    const Real without = product_without(g, y, a, -1);
    for (int i = 0; i < part.count; ++i)
      add_at(out, g.mixed[static_cast<std::size_t>(i)], ia,
             Real(part.gradient[i] * without));
    for (int b = a + 1; b < g.single_count; ++b)
      add_at(out, ia, g.single[static_cast<std::size_t>(b)],
             Real(part.value * product_without(g, y, a, b)));
  }
}

/// Any group with all derivatives. @return its value
template <class Real>
Real add_general(const TermGroup& g, const double* coefficients, const Real* y,
                 const SlopesOf<Real>& out) noexcept {
  MixingPart<Real> part;
  mixing_part(g, coefficients, y, part);
  const Real product = product_without(g, y, -1, -1);
  for (int i = 0; i < part.count; ++i)
    out.gradient[g.mixed[static_cast<std::size_t>(i)]] += part.gradient[i] * product;
  for (int a = 0; a < g.single_count; ++a)
    out.gradient[g.single[static_cast<std::size_t>(a)]] +=
        part.value * product_without(g, y, a, -1);
  if (out.hessian) add_hessian(g, part, y, product, out);
  return part.value * product;
}

/// An end member of N sublattices; single[] ascends, for sublattices are in order.
template <std::size_t N, class Real>
Real add_end_member(const TermGroup& g, double c, const Real* y,
                    const SlopesOf<Real>& out) noexcept {
  Real v[N];
  for (std::size_t k = 0; k < N; ++k) v[k] = y[g.single[k]];
  Real all_of = Real{} + c;
  for (std::size_t k = 0; k < N; ++k) all_of *= v[k];
  for (std::size_t a = 0; a < N; ++a) {
    Real without = Real{} + c;
    for (std::size_t k = 0; k < N; ++k)
      if (k != a) without *= v[k];
    out.gradient[g.single[a]] += without;
    if (!out.hessian) continue;
    for (std::size_t b = a + 1; b < N; ++b) {
      Real rest = Real{} + c;
      for (std::size_t k = 0; k < N; ++k)
        if (k != a && k != b) rest *= v[k];
      out.hessian[g.single[a] * out.n + g.single[b]] += rest;
    }
  }
  return all_of;
}

/// Two constituents that mix while one other sublattice holds a single constituent:
/// most interactions of two-sublattice phases.
template <class Real>
Real add_binary_beside_one(const TermGroup& g, const double* coefficients,
                           const Real* y, const SlopesOf<Real>& out) noexcept {
  MixingPart<Real> part;
  binary_part(coefficients, g.coefficient_count, y[g.mixed[0]], y[g.mixed[1]], part);
  const std::uint16_t i = g.mixed[0], j = g.mixed[1], k = g.single[0];
  const Real other = y[k];
  out.gradient[i] += part.gradient[0] * other;
  out.gradient[j] += part.gradient[1] * other;
  out.gradient[k] += part.value;
  if (out.hessian) {
    out.hessian[i * out.n + i] += part.hessian[0][0] * other;
    out.hessian[j * out.n + j] += part.hessian[1][1] * other;
    add_at(out, i, j, Real(part.hessian[0][1] * other));
    add_at(out, i, k, part.gradient[0]);
    add_at(out, j, k, part.gradient[1]);
  }
  return part.value * other;
}

template <class Real>
Real add_group(const TermGroup& g, const double* c, const Real* y,
               const SlopesOf<Real>& out) noexcept {
  if (g.mixing == Mixing::none) {
    switch (g.single_count) {
      case 1:
        return add_end_member<1>(g, *c, y, out);
      case 2:
        return add_end_member<2>(g, *c, y, out);
      case 3:
        return add_end_member<3>(g, *c, y, out);
      case 4:
        return add_end_member<4>(g, *c, y, out);
      default:
        return add_general(g, c, y, out);
    }
  }
  if (g.mixing == Mixing::binary && g.single_count == 1)
    return add_binary_beside_one(g, c, y, out);
  return add_general(g, c, y, out);
}

/// Value alone.
template <class Real>
Real group_value(const TermGroup& g, const double* c, const Real* y) noexcept {
  Real value = Real{} + *c;
  if (g.mixing == Mixing::binary) {
    const Real a = y[g.mixed[0]], b = y[g.mixed[1]], d = a - b;
    value = Real{};
    for (int n = g.coefficient_count - 1; n >= 0; --n) value = value * d + c[n];
    value *= a * b;
  } else if (g.mixing != Mixing::none) {
    MixingPart<Real> part;
    mixing_part(g, c, y, part);
    value = part.value;
  }
  for (std::size_t k = 0; k < g.single_count; ++k) value *= y[g.single[k]];
  return value;
}

/// sum over groups of L(T) P(y).
/// @param coefficients  L at one temperature, length polynomial.coefficient_count
template <class Real>
Real polynomial_value(const Polynomial& polynomial, const double* coefficients,
                      const Real* y) noexcept {
  Real sum{};
  for (const TermGroup& g : polynomial.groups)
    sum += group_value(g, coefficients + g.first_coefficient, y);
  return sum;
}

/// The same, with its derivatives added to `out`.
template <class Real>
Real add_polynomial(const Polynomial& polynomial, const double* coefficients,
                    const Real* y, const SlopesOf<Real>& out) noexcept {
  Real sum{};
  for (const TermGroup& g : polynomial.groups)
    sum += add_group(g, coefficients + g.first_coefficient, y, out);
  return sum;
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE

#include "internal/polynomial_kernel.hpp"

#include <algorithm>

namespace gibbsteel::internal {
namespace {

/// Value, gradient and Hessian of the mixing part in up to four variables.
struct MixingPart {
  double value;
  double gradient[4];
  double hessian[4][4];  ///< upper triangle
  int count = 0;
};

/// y_i y_j sum_n L_n (y_i - y_j)^n                                           Eq. (G2)
void binary_part(const double* coefficient, int orders, double a, double b,
                 MixingPart& part) noexcept {
  const double d = a - b;
  double p = 0.0, p1 = 0.0, p2 = 0.0;  // sum L_n d^n and its derivatives in d (Horner)
  for (int n = orders - 1; n >= 0; --n) {
    p2 = p2 * d + 2.0 * p1;
    p1 = p1 * d + p;
    p = p * d + coefficient[n];
  }
  const double ab = a * b;
  part.count = 2;
  part.value = ab * p;
  part.gradient[0] = b * p + ab * p1;
  part.gradient[1] = a * p - ab * p1;
  part.hessian[0][0] = 2.0 * b * p1 + ab * p2;
  part.hessian[1][1] = -2.0 * a * p1 + ab * p2;
  part.hessian[0][1] = p + (a - b) * p1 - ab * p2;
}

/// y_1 y_2 y_3 sum_n L_n (y_n + (1 - y_1 - y_2 - y_3) / 3)                   Eq. (G3)
void ternary_part(const double* coefficient, int orders, const double (&y)[3],
                  MixingPart& part) noexcept {
  const double rest = (1.0 - y[0] - y[1] - y[2]) / 3.0;
  double v = 0.0, sum = 0.0;
  double dv[3] = {};
  for (int n = 0; n < orders; ++n) {
    v += coefficient[n] * (y[n] + rest);
    dv[n] = coefficient[n];
    sum += coefficient[n];
  }
  for (double& slope : dv) slope -= sum / 3.0;
  const double yyy = y[0] * y[1] * y[2];
  const double pair[3] = {y[1] * y[2], y[0] * y[2], y[0] * y[1]};
  part.count = 3;
  part.value = yyy * v;
  for (int i = 0; i < 3; ++i) {
    part.gradient[i] = pair[i] * v + yyy * dv[i];
    part.hessian[i][i] = 2.0 * pair[i] * dv[i];
    for (int j = i + 1; j < 3; ++j)
      part.hessian[i][j] = y[3 - i - j] * v + pair[i] * dv[j] + pair[j] * dv[i];
  }
}

/// L y_i y_j y_k y_l                                                         Eq. (G4)
void reciprocal_part(double coefficient, const double (&y)[4],
                     MixingPart& part) noexcept {
  part.count = 4;
  part.value = coefficient * y[0] * y[1] * y[2] * y[3];
  for (int i = 0; i < 4; ++i) {
    double others = coefficient;
    for (int k = 0; k < 4; ++k)
      if (k != i) others *= y[k];
    part.gradient[i] = others;
    part.hessian[i][i] = 0.0;
    for (int j = i + 1; j < 4; ++j) {
      double rest = coefficient;
      for (int k = 0; k < 4; ++k)
        if (k != i && k != j) rest *= y[k];
      part.hessian[i][j] = rest;
    }
  }
}

void mixing_part(const TermGroup& g, const double* coefficient, const double* y,
                 MixingPart& part) noexcept {
  switch (g.mixing) {
    case Mixing::none:
      part.value = coefficient[0];
      return;
    case Mixing::binary:
      return binary_part(coefficient, g.coefficient_count, y[g.mixed[0]], y[g.mixed[1]],
                         part);
    case Mixing::ternary:
      return ternary_part(coefficient, g.coefficient_count,
                          {y[g.mixed[0]], y[g.mixed[1]], y[g.mixed[2]]}, part);
    case Mixing::reciprocal:
      return reciprocal_part(
          coefficient[0], {y[g.mixed[0]], y[g.mixed[1]], y[g.mixed[2]], y[g.mixed[3]]},
          part);
  }
}

/// Product of the single site fractions but those at positions `skip1` and `skip2`.
double product_without(const TermGroup& g, const double* y, int skip1,
                       int skip2) noexcept {
  double product = 1.0;
  for (int k = 0; k < g.single_count; ++k)
    if (k != skip1 && k != skip2) product *= y[g.single[static_cast<std::size_t>(k)]];
  return product;
}

void add_at(const Accumulator& out, std::uint16_t i, std::uint16_t j,
            double value) noexcept {
  const std::size_t row = std::min(i, j), column = std::max(i, j);
  out.hessian[row * out.n + column] += value;
}

void add_hessian(const TermGroup& g, const MixingPart& part, const double* y,
                 double product, const Accumulator& out) noexcept {
  for (int i = 0; i < part.count; ++i)
    for (int j = i; j < part.count; ++j)
      add_at(out, g.mixed[static_cast<std::size_t>(i)],
             g.mixed[static_cast<std::size_t>(j)], part.hessian[i][j] * product);
  for (int a = 0; a < g.single_count; ++a) {
    const auto ia = g.single[static_cast<std::size_t>(a)];
    const double without = product_without(g, y, a, -1);
    for (int i = 0; i < part.count; ++i)
      add_at(out, g.mixed[static_cast<std::size_t>(i)], ia, part.gradient[i] * without);
    for (int b = a + 1; b < g.single_count; ++b)
      add_at(out, ia, g.single[static_cast<std::size_t>(b)],
             part.value * product_without(g, y, a, b));
  }
}

/// Any group with all derivatives.
void add_general(const TermGroup& g, const double* coefficients, const double* y,
                 const Accumulator& out) noexcept {
  MixingPart part;
  mixing_part(g, coefficients, y, part);
  const double product = product_without(g, y, -1, -1);
  *out.value += part.value * product;
  for (int i = 0; i < part.count; ++i)
    out.gradient[g.mixed[static_cast<std::size_t>(i)]] += part.gradient[i] * product;
  for (int a = 0; a < g.single_count; ++a)
    out.gradient[g.single[static_cast<std::size_t>(a)]] +=
        part.value * product_without(g, y, a, -1);
  if (out.hessian) add_hessian(g, part, y, product, out);
}

/// An end member of N sublattices; single[] ascends, for sublattices are in order.
template <std::size_t N>
void add_end_member(const TermGroup& g, double c, const double* y,
                    const Accumulator& out) noexcept {
  double v[N];
  for (std::size_t k = 0; k < N; ++k) v[k] = y[g.single[k]];
  double all = c;
  for (std::size_t k = 0; k < N; ++k) all *= v[k];
  *out.value += all;
  for (std::size_t a = 0; a < N; ++a) {
    double without = c;
    for (std::size_t k = 0; k < N; ++k) without *= k == a ? 1.0 : v[k];
    out.gradient[g.single[a]] += without;
    if (!out.hessian) continue;
    for (std::size_t b = a + 1; b < N; ++b) {
      double rest = c;
      for (std::size_t k = 0; k < N; ++k) rest *= k == a || k == b ? 1.0 : v[k];
      out.hessian[g.single[a] * out.n + g.single[b]] += rest;
    }
  }
}

/// Two constituents that mix while one other sublattice holds a single constituent:
/// most interactions of two-sublattice phases.
void add_binary_beside_one(const TermGroup& g, const double* coefficients,
                           const double* y, const Accumulator& out) noexcept {
  MixingPart part;
  binary_part(coefficients, g.coefficient_count, y[g.mixed[0]], y[g.mixed[1]], part);
  const std::uint16_t i = g.mixed[0], j = g.mixed[1], k = g.single[0];
  const double other = y[k];
  *out.value += part.value * other;
  out.gradient[i] += part.gradient[0] * other;
  out.gradient[j] += part.gradient[1] * other;
  out.gradient[k] += part.value;
  if (!out.hessian) return;
  out.hessian[i * out.n + i] += part.hessian[0][0] * other;
  out.hessian[j * out.n + j] += part.hessian[1][1] * other;
  add_at(out, i, j, part.hessian[0][1] * other);
  add_at(out, i, k, part.gradient[0]);
  add_at(out, j, k, part.gradient[1]);
}

void add_group(const TermGroup& g, const double* c, const double* y,
               const Accumulator& out) noexcept {
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
  add_general(g, c, y, out);
}

/// Value alone.
double group_value(const TermGroup& g, const double* c, const double* y) noexcept {
  double value = *c;
  if (g.mixing == Mixing::binary) {
    const double a = y[g.mixed[0]], b = y[g.mixed[1]], d = a - b;
    value = 0.0;
    for (int n = g.coefficient_count - 1; n >= 0; --n) value = value * d + c[n];
    value *= a * b;
  } else if (g.mixing != Mixing::none) {
    MixingPart part;
    mixing_part(g, c, y, part);
    value = part.value;
  }
  for (std::size_t k = 0; k < g.single_count; ++k) value *= y[g.single[k]];
  return value;
}

}  // namespace

void add_polynomial(const Polynomial& polynomial, const double* coefficients,
                    const double* y, const Accumulator& out) noexcept {
  for (const TermGroup& g : polynomial.groups) {
    const double* c = coefficients + g.first_coefficient;
    if (out.gradient)
      add_group(g, c, y, out);
    else
      *out.value += group_value(g, c, y);
  }
}

}  // namespace gibbsteel::internal

#include "internal/polynomial_kernel.hpp"

#include <algorithm>

namespace gibbsteel::internal {
namespace {

/// Value, gradient and Hessian of the mixing part in up to four variables.
struct MixingPart {
  double value = 1.0;
  double gradient[4] = {};
  double hessian[4][4] = {};  ///< upper triangle
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
      return binary_part(coefficient, g.coefficient_count, y[g.mixed[0]],
                         y[g.mixed[1]], part);
    case Mixing::ternary:
      return ternary_part(coefficient, g.coefficient_count,
                          {y[g.mixed[0]], y[g.mixed[1]], y[g.mixed[2]]}, part);
    case Mixing::reciprocal:
      return reciprocal_part(
          coefficient[0],
          {y[g.mixed[0]], y[g.mixed[1]], y[g.mixed[2]], y[g.mixed[3]]}, part);
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

}  // namespace

void add_polynomial(const Polynomial& polynomial, const double* coefficients,
                    const double* y, const Accumulator& out) noexcept {
  for (const TermGroup& g : polynomial.groups) {
    MixingPart part;
    mixing_part(g, coefficients + g.first_coefficient, y, part);
    const double product = product_without(g, y, -1, -1);
    if (out.value) *out.value += part.value * product;
    if (out.gradient) {
      for (int i = 0; i < part.count; ++i)
        out.gradient[g.mixed[static_cast<std::size_t>(i)]] += part.gradient[i] * product;
      for (int a = 0; a < g.single_count; ++a)
        out.gradient[g.single[static_cast<std::size_t>(a)]] +=
            part.value * product_without(g, y, a, -1);
    }
    if (out.hessian) add_hessian(g, part, y, product, out);
  }
}

}  // namespace gibbsteel::internal

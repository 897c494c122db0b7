#include "proof/interval_polynomial.hpp"

namespace gibbsteel::internal {
namespace {

/// Value, gradient and Hessian of the mixing part in up to four variables.
struct Part {
  Interval value;
  Interval gradient[4];
  Interval hessian[4][4];  ///< upper triangle
  int count = 0;
};

/// Eq. (G2), as binary_part of the kernel.
void binary_part(const double* coefficient, int orders, const Interval& a,
                 const Interval& b, Part& part) noexcept {
  const Interval d = a - b;
  Interval p, p1, p2;
  for (int n = orders - 1; n >= 0; --n) {
    p2 = p2 * d + 2.0 * p1;
    p1 = p1 * d + p;
    p = p * d + exactly(coefficient[n]);
  }
  const Interval ab = a * b;
  part.count = 2;
  part.value = ab * p;
  if (orders == 1) {  // p1 and p2 are zero: no rounding is wanted on them
    part.gradient[0] = b * p;
    part.gradient[1] = a * p;
    part.hessian[0][0] = part.hessian[1][1] = {};
    part.hessian[0][1] = p;
    return;
  }
  part.gradient[0] = b * p + ab * p1;
  part.gradient[1] = a * p - ab * p1;
  part.hessian[0][0] = 2.0 * (b * p1) + ab * p2;
  part.hessian[1][1] = -2.0 * (a * p1) + ab * p2;
  part.hessian[0][1] = p + d * p1 - ab * p2;
}

/// Eq. (G3).
void ternary_part(const double* coefficient, int orders, const Interval (&y)[3],
                  Part& part) noexcept {
  const Interval third = exactly(1.0) * reciprocal(exactly(3.0));
  const Interval rest = (exactly(1.0) - y[0] - y[1] - y[2]) * third;
  Interval v, sum;
  Interval dv[3] = {};
  for (int n = 0; n < orders; ++n) {
    v += coefficient[n] * (y[n] + rest);
    dv[n] = exactly(coefficient[n]);
    sum += exactly(coefficient[n]);
  }
  for (Interval& slope : dv) slope = slope - sum * third;
  const Interval yyy = y[0] * y[1] * y[2];
  const Interval pair[3] = {y[1] * y[2], y[0] * y[2], y[0] * y[1]};
  part.count = 3;
  part.value = yyy * v;
  for (int i = 0; i < 3; ++i) {
    part.gradient[i] = pair[i] * v + yyy * dv[i];
    part.hessian[i][i] = 2.0 * (pair[i] * dv[i]);
    for (int j = i + 1; j < 3; ++j)
      part.hessian[i][j] = y[3 - i - j] * v + pair[i] * dv[j] + pair[j] * dv[i];
  }
}

/// Eq. (G4).
void reciprocal_part(double coefficient, const Interval (&y)[4], Part& part) noexcept {
  const auto product = [&](int skip1, int skip2) {
    Interval result = exactly(coefficient);
    for (int k = 0; k < 4; ++k)
      if (k != skip1 && k != skip2) result = result * y[k];
    return result;
  };
  part.count = 4;
  part.value = product(-1, -1);
  for (int i = 0; i < 4; ++i) {
    part.gradient[i] = product(i, -1);
    part.hessian[i][i] = {};
    for (int j = i + 1; j < 4; ++j) part.hessian[i][j] = product(i, j);
  }
}

void mixing_part(const TermGroup& g, const double* coefficient, const Interval* y,
                 Part& part) noexcept {
  switch (g.mixing) {
    case Mixing::none:
      part.value = exactly(coefficient[0]);
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

Interval product_without(const TermGroup& g, const Interval* y, int skip1,
                         int skip2) noexcept {
  Interval product = exactly(1.0);
  bool first = true;
  for (int k = 0; k < g.single_count; ++k) {
    if (k == skip1 || k == skip2) continue;
    const Interval& factor = y[g.single[static_cast<std::size_t>(k)]];
    product = first ? factor : product * factor;
    first = false;
  }
  return product;
}

void add_at(const IntervalAccumulator& out, std::uint16_t i, std::uint16_t j,
            const Interval& value) noexcept {
  const std::size_t row = std::min(i, j), column = std::max(i, j);
  out.hessian[row * out.n + column] += value;
}

void add_hessian(const TermGroup& g, const Part& part, const Interval* y,
                 const Interval& product, const IntervalAccumulator& out) noexcept {
  for (int i = 0; i < part.count; ++i)
    for (int j = i; j < part.count; ++j)
      add_at(out, g.mixed[static_cast<std::size_t>(i)],
             g.mixed[static_cast<std::size_t>(j)], part.hessian[i][j] * product);
  for (int a = 0; a < g.single_count; ++a) {
    const auto ia = g.single[static_cast<std::size_t>(a)];
    const Interval without = product_without(g, y, a, -1);
    for (int i = 0; i < part.count; ++i)
      add_at(out, g.mixed[static_cast<std::size_t>(i)], ia, part.gradient[i] * without);
    for (int b = a + 1; b < g.single_count; ++b)
      add_at(out, ia, g.single[static_cast<std::size_t>(b)],
             part.value * product_without(g, y, a, b));
  }
}

void add_group(const TermGroup& g, const double* c, const Interval* y,
               const IntervalAccumulator& out) noexcept {
  Part part;
  mixing_part(g, c, y, part);
  const Interval product = product_without(g, y, -1, -1);
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

}  // namespace

void add_polynomial(const Polynomial& polynomial, const double* coefficients,
                    const Interval* y, const IntervalAccumulator& out) noexcept {
  for (const TermGroup& g : polynomial.groups)
    add_group(g, coefficients + g.first_coefficient, y, out);
}

}  // namespace gibbsteel::internal

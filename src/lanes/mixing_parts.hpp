#pragma once
/// The mixing part of one group of terms, Eq. (G2) to (G4), in any number type: value,
/// gradient and upper triangle of the Hessian in up to four variables.

#include "internal/polynomial_kernel.hpp"
#include "lanes/real.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

template <class Real>
struct MixingPart {
  Real value;
  Real gradient[4];
  Real hessian[4][4];  ///< upper triangle
  int count = 0;
};

/// y_i y_j sum_n L_n (y_i - y_j)^n                                           Eq. (G2)
template <class Real>
void binary_part(const double* coefficient, int orders, const Real& a, const Real& b,
                 MixingPart<Real>& part) noexcept {
  const Real d = a - b;
  Real p{}, p1{}, p2{};  // sum L_n d^n and its derivatives in d (Horner)
  for (int n = orders - 1; n >= 0; --n) {
    p2 = p2 * d + 2.0 * p1;
    p1 = p1 * d + p;
    p = p * d + coefficient[n];
  }
  const Real ab = a * b;
  part.count = 2;
  part.value = ab * p;
  part.gradient[0] = b * p + ab * p1;
  part.gradient[1] = a * p - ab * p1;
  part.hessian[0][0] = 2.0 * b * p1 + ab * p2;
  part.hessian[1][1] = -2.0 * a * p1 + ab * p2;
  part.hessian[0][1] = p + d * p1 - ab * p2;
}

/// y_1 y_2 y_3 sum_n L_n (y_n + (1 - y_1 - y_2 - y_3) / 3)                   Eq. (G3)
template <class Real>
void ternary_part(const double* coefficient, int orders, const Real (&y)[3],
                  MixingPart<Real>& part) noexcept {
  const Real rest = (1.0 - y[0] - y[1] - y[2]) / 3.0;
  Real v{};
  double sum = 0.0, dv[3] = {};
  for (int n = 0; n < orders; ++n) {
    v += coefficient[n] * (y[n] + rest);
    dv[n] = coefficient[n];
    sum += coefficient[n];
  }
  for (double& slope : dv) slope -= sum / 3.0;
  const Real yyy = y[0] * y[1] * y[2];
  const Real pair[3] = {y[1] * y[2], y[0] * y[2], y[0] * y[1]};
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
template <class Real>
void reciprocal_part(double coefficient, const Real (&y)[4],
                     MixingPart<Real>& part) noexcept {
  part.count = 4;
  part.value = coefficient * y[0] * y[1] * y[2] * y[3];
  for (int i = 0; i < 4; ++i) {
    Real others = Real{} + coefficient;
    for (int k = 0; k < 4; ++k)
      if (k != i) others *= y[k];
    part.gradient[i] = others;
    part.hessian[i][i] = Real{};
    for (int j = i + 1; j < 4; ++j) {
      Real rest = Real{} + coefficient;
      for (int k = 0; k < 4; ++k)
        if (k != i && k != j) rest *= y[k];
      part.hessian[i][j] = rest;
    }
  }
}

template <class Real>
void mixing_part(const TermGroup& g, const double* coefficient, const Real* y,
                 MixingPart<Real>& part) noexcept {
  const auto& m = g.mixed;
  switch (g.mixing) {
    case Mixing::none:
      part.value = Real{} + coefficient[0];
      return;
    case Mixing::binary:
      return binary_part(coefficient, g.coefficient_count, y[m[0]], y[m[1]], part);
    case Mixing::ternary:
      return ternary_part(coefficient, g.coefficient_count, {y[m[0]], y[m[1]], y[m[2]]},
                          part);
    case Mixing::reciprocal:
      return reciprocal_part(coefficient[0], {y[m[0]], y[m[1]], y[m[2]], y[m[3]]},
                             part);
  }
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE

#pragma once
/// Magnetic ordering energy of Eq. (G5) as a function of T, Curie temperature and
/// moment, with the Inden-Hillert-Jarl series, in any number type:
///
///   G_mag = R T ln(beta + 1) g(tau),  tau = T / T_C                           Eq. (G5)
///   g = 1 - [79/(140 p tau)
///            + (474/497)(1/p - 1)(tau^3/6 + tau^9/135 + tau^15/600)] / A
///       for tau < 1                                                           Eq. (G6)
///   g = -[tau^-5/10 + tau^-15/315 + tau^-25/1500] / A   for tau >= 1          Eq. (G7)
///   A = 518/1125 + (11692/15975)(1/p - 1)
///
/// g and g' are continuous at tau = 1, g'' is not. Hillert & Jarl, CALPHAD 2 (1978) 227
/// (from memory).

#include "gibbsteel/units.hpp"
#include "lanes/exponentials.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

template <class Real>
struct MagneticShape {
  Real g{};
  Real dg{};   ///< dg/dtau
  Real dg2{};  ///< d2g/dtau2; the upper branch at tau = 1
};

/// Eq. (G6), r = 1 / tau.
template <class Real>
MagneticShape<Real> ordered_shape(const Real& tau, const Real& r, double p) noexcept {
  const double k = 1.0 / p - 1.0, a = 518.0 / 1125.0 + 11692.0 / 15975.0 * k;
  const double m = 474.0 / 497.0 * k;
  const Real t2 = tau * tau, t3 = t2 * tau, t6 = t3 * t3, t9 = t6 * t3, t15 = t9 * t6;
  const Real s = 79.0 / (140.0 * p) * r;
  return {
      1.0 - (s + m * (t3 / 6.0 + t9 / 135.0 + t15 / 600.0)) / a,
      -(-s * r + m * r * (t3 / 2.0 + t9 / 15.0 + t15 / 40.0)) / a,
      -(2.0 * s * r * r + m * r * r * (t3 + t9 * (8.0 / 15.0) + t15 * (14.0 / 40.0))) /
          a};
}

/// Eq. (G7), r = 1 / tau.
template <class Real>
MagneticShape<Real> disordered_shape(const Real& r, double p) noexcept {
  const double k = 1.0 / p - 1.0, a = 518.0 / 1125.0 + 11692.0 / 15975.0 * k;
  const Real r2 = r * r, r5 = r2 * r2 * r, r10 = r5 * r5, r15 = r10 * r5;
  const Real r25 = r15 * r10;
  return {-(r5 / 10.0 + r15 / 315.0 + r25 / 1500.0) / a,
          (r5 / 2.0 + r15 / 21.0 + r25 / 60.0) * r / a,
          -(r5 * 3.0 + r15 * (16.0 / 21.0) + r25 * (26.0 / 60.0)) * r2 / a};
}

/// @param p  structure factor, in (0, 1]
template <class Real>
MagneticShape<Real> magnetic_shape(const Real& tau, double p) noexcept {
  const Real r = 1.0 / tau;
  const auto ordered = tau < 1.0;
  if (!any(ordered)) return disordered_shape(r, p);
  MagneticShape<Real> shape = ordered_shape(tau, r, p);
  if (!any(!ordered)) return shape;
  const MagneticShape<Real> above = disordered_shape(r, p);
  shape.g = ordered ? shape.g : above.g;
  shape.dg = ordered ? shape.dg : above.dg;
  shape.dg2 = ordered ? shape.dg2 : above.dg2;
  return shape;
}

/// G_mag and its derivatives in T, Curie temperature c and moment b [J/mol].
template <class Real>
struct MagneticEnergy {
  Real value{};
  Real t{}, c{}, b{};
  Real tt{}, tc{}, tb{}, cc{}, cb{}, bb{};
};

/// @param curie, moment  effective values (>= 0); at curie = 0 and finite moments
///                       everything is 0, which is the limit of the series
template <class Real>
MagneticEnergy<Real> magnetic_energy(double t, const Real& curie, const Real& moment,
                                     double p) noexcept {
  constexpr double kNoOrder = 1e-3;  // [K]; the energy is under 1e-20 J/mol below it
  const Real zero{}, some = Real{} + kNoOrder;
  const auto orders = !(curie < kNoOrder);  // NaN stays
  const Real at = orders ? curie : some, tau = t / at;
  MagneticShape<Real> shape = magnetic_shape(tau, p);
  const Real log = logarithm(Real(1.0 + moment));
  const Real slope = 1.0 / (1.0 + moment);  // of the logarithm
  const Real g = orders ? shape.g : zero, dg = orders ? shape.dg : zero;
  const Real dg2 = orders ? shape.dg2 : zero;
  const double rt = kGasConstant * t;
  const Real g_c = -dg * tau / at;
  const Real g_t = g + tau * dg;            // d(T g)/dT
  const Real twice = 2.0 * dg + tau * dg2;  // at times d2(T g)/dT2
  MagneticEnergy<Real> e;
  e.value = rt * log * g;
  e.t = kGasConstant * log * g_t;
  e.tt = kGasConstant * log * (twice / at);
  e.c = rt * log * g_c;
  e.cc = rt * log * ((dg2 * tau + 2.0 * dg) * tau / (at * at));
  e.b = rt * slope * g;
  e.bb = -rt * slope * slope * g;
  e.cb = rt * slope * g_c;
  e.tc = kGasConstant * log * (-tau * twice / at);
  e.tb = kGasConstant * slope * g_t;
  return e;
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE

#include "internal/magnetic_kernel.hpp"

#include <cmath>

#include "gibbsteel/units.hpp"

namespace gibbsteel::internal {
namespace {

/// Below this Curie temperature [K] the energy is under 1e-20 J/mol at any soak.
constexpr double kNoOrder = 1e-3;

}  // namespace

MagneticShape magnetic_shape(double tau, double p) noexcept {
  const double k = 1.0 / p - 1.0;
  const double a = 518.0 / 1125.0 + 11692.0 / 15975.0 * k;
  const double r = 1.0 / tau;
  if (tau < 1.0) {
    const double m = 474.0 / 497.0 * k;
    const double t2 = tau * tau, t3 = t2 * tau, t6 = t3 * t3;
    const double t9 = t6 * t3, t15 = t9 * t6;
    const double s = 79.0 / (140.0 * p) * r;
    return {
        1.0 - (s + m * (t3 / 6.0 + t9 / 135.0 + t15 / 600.0)) / a,
        -(-s * r + m * r * (t3 / 2.0 + t9 / 15.0 + t15 / 40.0)) / a,
        -(2.0 * s * r * r + m * r * r * (t3 + t9 * 8.0 / 15.0 + t15 * 14.0 / 40.0)) /
            a};
  }
  const double r2 = r * r, r5 = r2 * r2 * r;
  const double r15 = r5 * r5 * r5, r25 = r15 * r5 * r5;
  return {-(r5 / 10.0 + r15 / 315.0 + r25 / 1500.0) / a,
          (r5 / 2.0 + r15 / 21.0 + r25 / 60.0) * r / a,
          -(r5 * 3.0 + r15 * 16.0 / 21.0 + r25 * 26.0 / 60.0) * r2 / a};
}

MagneticEnergy magnetic_energy(double t, double curie, double moment,
                               double p) noexcept {
  if (curie < kNoOrder) return {};
  const double tau = t / curie;
  const auto [g, dg, dg2] = magnetic_shape(tau, p);
  const double log = std::log1p(moment);
  const double log_b = 1.0 / (1.0 + moment);
  const double rt = kGasConstant * t;
  const double g_c = -dg * tau / curie;
  const double g_cc = (dg2 * tau + 2.0 * dg) * tau / (curie * curie);
  const double g_t = g + tau * dg;                            // d(T g)/dT
  const double g_tt = (2.0 * dg + tau * dg2) / curie;         // d2(T g)/dT2
  const double g_tc = -tau * (2.0 * dg + tau * dg2) / curie;  // d2(T g)/dT dc
  MagneticEnergy e;
  e.value = rt * log * g;
  e.t = kGasConstant * log * g_t;
  e.tt = kGasConstant * log * g_tt;
  e.c = rt * log * g_c;
  e.cc = rt * log * g_cc;
  e.b = rt * log_b * g;
  e.bb = -rt * log_b * log_b * g;
  e.cb = rt * log_b * g_c;
  e.tc = kGasConstant * log * g_tc;
  e.tb = kGasConstant * log_b * g_t;
  return e;
}

}  // namespace gibbsteel::internal

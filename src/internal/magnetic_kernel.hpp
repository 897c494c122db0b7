#pragma once
/// Magnetic ordering energy of Eq. (G5) as a function of T, Curie temperature and
/// moment, with the Inden-Hillert-Jarl series:
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

namespace gibbsteel::internal {

struct MagneticShape {
  double g = 0.0;
  double dg = 0.0;   ///< dg/dtau
  double dg2 = 0.0;  ///< d2g/dtau2; the upper branch at tau = 1
};

/// @param p  structure factor, in (0, 1]
MagneticShape magnetic_shape(double tau, double p) noexcept;

/// G_mag and its derivatives in T, Curie temperature c and moment b [J/mol].
struct MagneticEnergy {
  double value = 0.0;
  double t = 0.0, c = 0.0, b = 0.0;
  double tt = 0.0, tc = 0.0, tb = 0.0, cc = 0.0, cb = 0.0, bb = 0.0;
};

/// @param curie, moment  effective values (>= 0); at curie = 0 everything is 0, which
/// is
///                       the limit of the series
MagneticEnergy magnetic_energy(double t, double curie, double moment,
                               double p) noexcept;

}  // namespace gibbsteel::internal

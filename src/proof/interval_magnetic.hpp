#pragma once
/// Magnetic ordering energy, Eq. (G5) to (G7), over intervals of the effective Curie
/// temperature c and moment b.
///
/// With x = c / T the functions g, dg/dx and d2g/dx2 are monotonic in x on either side
/// of x = 1, and g and dg/dx are continuous there: their ranges follow from the ends
/// and, for the second derivative, from both one-sided values at x = 1. Where the
/// second derivative jumps, its range holds both values, which is what a second-order
/// mean-value bound needs (dg/dx is Lipschitz there).

#include "proof/interval.hpp"

namespace gibbsteel::internal {

/// Enclosures of G_mag and its derivatives in c and b [J/mol].
struct MagneticEnclosure {
  Interval value, c, b, cc, cb, bb;
};

/// @param t  [K]; @param curie, moment  effective values, >= 0; @param p structure
/// factor
MagneticEnclosure enclose_magnetic(double t, const Interval& curie,
                                   const Interval& moment, double p) noexcept;

}  // namespace gibbsteel::internal

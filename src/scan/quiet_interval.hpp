#pragma once
/// Whether a phase can appear or vanish between two nodes that hold the same phases.
///
/// Amounts n and, for absent phases, the height D above the tangent plane are cubic
/// between two nodes to the accuracy of their third derivative: the cubic through the
/// values and slopes at both ends. In Bernstein form it has the coefficients
///
///   v0,  v0 + h v0'/3,  v1 - h v1'/3,  v1                                     Eq. (T1)
///
/// and stays above the lowest of them. (Farouki, Comput. Aided Geom. Des. 29 (2012)
/// 379, from memory.) What the cubic leaves out is taken as half of its cubic part
/// 2 (v0 - v1) + h (v0' + v1').

#include "scan/line_node.hpp"

namespace gibbsteel::internal {

/// A number at both ends of an interval, and its slopes.
struct EndValues {
  double v0, v1;    ///< > 0
  double dv0, dv1;  ///< per unit of h; NaN: not known, nothing is then certain
};

/// True when a quantity that is positive at both ends is certain to stay above `floor`
/// between them, or to be monotonic there.
bool stays_positive(const EndValues& ends, double h, double floor) noexcept;

/// True when no phase set other than that of `a` and `b` is to be expected between
/// them. Both must be usable, with slopes, and have the same phase set.
bool is_quiet(const LineNode& a, const LineNode& b);

}  // namespace gibbsteel::internal

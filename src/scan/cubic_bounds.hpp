#pragma once
/// What values and slopes at both ends say about a number in between.
///
/// Between two nodes a number is cubic to the accuracy of its third derivative: the
/// cubic through the values v and slopes v' at both ends. With h the distance it has,
/// in Bernstein form, the coefficients
///
///   v0,  v0 + h v0'/3,  v1 - h v1'/3,  v1                                     Eq. (T1)
///
/// and stays above the lowest of them; its derivative is monotonic in the same way.
/// (Farouki, Comput. Aided Geom. Des. 29 (2012) 379, from memory.) What the cubic
/// leaves out is taken as half of its cubic part 2 (v0 - v1) + h (v0' + v1').

namespace gibbsteel::internal {

/// A number at both ends of an interval, and its slopes.
struct EndValues {
  double v0, v1;
  double dv0, dv1;  ///< per unit of h; NaN: not known, nothing is then certain
};

/// True when a number that is positive at both ends is certain to stay above `floor`
/// between them, or to be monotonic there.
bool stays_positive(const EndValues& ends, double h, double floor) noexcept;

/// True when it is certain to rise, or to fall, all the way.
bool is_monotonic(const EndValues& ends, double h) noexcept;

}  // namespace gibbsteel::internal

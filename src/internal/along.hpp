#pragma once
/// A number and its derivative along one direction: the sums and products of a chain
/// rule, written once for value and slope.

namespace gibbsteel::internal {

struct Along {
  double value = 0.0;
  double slope = 0.0;
};

inline Along operator+(Along a, Along b) {
  return {a.value + b.value, a.slope + b.slope};
}
inline Along operator-(Along a, Along b) {
  return {a.value - b.value, a.slope - b.slope};
}
inline Along operator*(Along a, Along b) {
  return {a.value * b.value, a.slope * b.value + a.value * b.slope};
}
inline Along operator/(Along a, Along b) {
  const double ratio = a.value / b.value;
  return {ratio, (a.slope - ratio * b.slope) / b.value};
}
inline Along operator*(double factor, Along a) {
  return {factor * a.value, factor * a.slope};
}
/// factor - a, for the rest of a fraction.
inline Along operator-(double one, Along a) { return {one - a.value, -a.slope}; }

}  // namespace gibbsteel::internal

#pragma once
/// A value with its slope: the rules of differentiation for sums, products, quotients
/// and exponentials, for quantities that are built from those of an equilibrium.

#include <cmath>

namespace gibbsteel::internal {

struct Dual {
  double value = 0.0;
  double slope = 0.0;

  Dual() = default;
  Dual(double constant) : value(constant) {}  // NOLINT: a constant is a Dual
  Dual(double v, double s) : value(v), slope(s) {}

  Dual& operator+=(const Dual& b) {
    value += b.value;
    slope += b.slope;
    return *this;
  }
};

inline Dual operator+(const Dual& a, const Dual& b) {
  return {a.value + b.value, a.slope + b.slope};
}
inline Dual operator-(const Dual& a, const Dual& b) {
  return {a.value - b.value, a.slope - b.slope};
}
inline Dual operator*(const Dual& a, const Dual& b) {
  return {a.value * b.value, a.slope * b.value + a.value * b.slope};
}
inline Dual operator/(const Dual& a, const Dual& b) {
  const double ratio = a.value / b.value;
  return {ratio, (a.slope - ratio * b.slope) / b.value};
}
inline Dual exp(const Dual& a) {
  const double value = std::exp(a.value);
  return {value, value * a.slope};
}

inline bool is_zero(double a) noexcept { return a == 0.0; }
inline bool is_zero(const Dual& a) noexcept { return a.value == 0.0 && a.slope == 0.0; }

}  // namespace gibbsteel::internal

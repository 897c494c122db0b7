#pragma once
/// Closed intervals with outward rounding: the result of an operation holds every value
/// that the exact operation can give on members of its operands.
///
/// Every bound is computed in the usual rounding (error at most half a unit in the last
/// place, or half the smallest subnormal) and then moved outwards by three halves of a
/// unit and the smallest normal number. No rounding mode is switched, so the result
/// does not depend on compiler flags. exp and log are taken to be right within four
/// units in the last place; tests compare all of them with 50-digit arithmetic.

#include <algorithm>
#include <cmath>
#include <limits>

namespace gibbsteel::internal {

struct Interval {
  double lo = 0.0, hi = 0.0;

  double width() const noexcept { return hi - lo; }
  double magnitude() const noexcept { return std::max(std::abs(lo), std::abs(hi)); }
  bool contains(double x) const noexcept { return lo <= x && x <= hi; }
};

namespace rounding {

inline constexpr double kHalfUnit = 0x1p-53;
inline constexpr double kLeast = std::numeric_limits<double>::min();

inline double down(double x, double halves = 3.0) noexcept {
  return x - (std::abs(x) * (halves * kHalfUnit) + kLeast);
}
inline double up(double x, double halves = 3.0) noexcept {
  return x + (std::abs(x) * (halves * kHalfUnit) + kLeast);
}

}  // namespace rounding

inline Interval exactly(double x) noexcept { return {x, x}; }
inline Interval hull(const Interval& a, const Interval& b) noexcept {
  return {std::min(a.lo, b.lo), std::max(a.hi, b.hi)};
}

inline Interval operator-(const Interval& a) noexcept { return {-a.hi, -a.lo}; }
inline Interval operator+(const Interval& a, const Interval& b) noexcept {
  return {rounding::down(a.lo + b.lo), rounding::up(a.hi + b.hi)};
}
inline Interval operator-(const Interval& a, const Interval& b) noexcept {
  return a + (-b);
}
inline Interval operator*(double k, const Interval& a) noexcept {
  const double x = k * a.lo, y = k * a.hi;
  return {rounding::down(std::min(x, y)), rounding::up(std::max(x, y))};
}
inline Interval operator*(const Interval& a, const Interval& b) noexcept {
  const double p = a.lo * b.lo, q = a.lo * b.hi, r = a.hi * b.lo, s = a.hi * b.hi;
  return {rounding::down(std::min(std::min(p, q), std::min(r, s))),
          rounding::up(std::max(std::max(p, q), std::max(r, s)))};
}
inline Interval& operator+=(Interval& a, const Interval& b) noexcept {
  return a = a + b;
}
/// 1 / a for 0 < a.
inline Interval reciprocal(const Interval& a) noexcept {
  return {rounding::down(1.0 / a.hi), rounding::up(1.0 / a.lo)};
}
/// ln a for 0 < a.
inline Interval log(const Interval& a) noexcept {
  return {rounding::down(std::log(a.lo), 10.0), rounding::up(std::log(a.hi), 10.0)};
}
inline Interval exp(const Interval& a) noexcept {
  return {std::max(0.0, rounding::down(std::exp(a.lo), 10.0)),
          rounding::up(std::exp(a.hi), 10.0)};
}
/// a^n for 0 <= a.
inline Interval power(const Interval& a, int n) noexcept {
  Interval result = exactly(1.0);
  for (int k = 0; k < n; ++k) result = result * a;
  return {std::max(0.0, result.lo), result.hi};
}

}  // namespace gibbsteel::internal

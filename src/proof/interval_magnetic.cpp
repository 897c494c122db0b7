#include "proof/interval_magnetic.hpp"

#include "gibbsteel/units.hpp"

namespace gibbsteel::internal {
namespace {

/// g, dg/dx and d2g/dx2 in x = c / T.
struct Shape {
  Interval g, d1, d2;
};

Interval ratio(double a, double b) noexcept {
  return exactly(a) * reciprocal(exactly(b));
}

struct Constants {
  Interval k, per_a;
  explicit Constants(double p) noexcept
      : k(reciprocal(exactly(p)) - exactly(1.0)),
        per_a(reciprocal(ratio(518.0, 1125.0) + ratio(11692.0, 15975.0) * k)) {}
};

/// Paramagnetic side, 0 <= x <= 1, Eq. (G7).
Shape above_curie(double x, const Constants& a) noexcept {
  const Interval v = exactly(x);
  const auto term = [&](int n, double over) {
    return power(v, n) * reciprocal(exactly(over));
  };
  return {-(a.per_a * (term(5, 10.0) + term(15, 315.0) + term(25, 1500.0))),
          -(a.per_a * (term(4, 2.0) + term(14, 21.0) + term(24, 60.0))),
          -(a.per_a * (2.0 * power(v, 3) + term(13, 1.5) + term(23, 2.5)))};
}

/// Ordered side, x >= 1, Eq. (G6).
Shape below_curie(double x, double p, const Constants& a) noexcept {
  const Interval r = reciprocal(exactly(x));
  const Interval m = ratio(474.0, 497.0) * a.k;
  const Interval s = exactly(79.0) * reciprocal(140.0 * exactly(p));
  const auto term = [&](int n, double over) {
    return power(r, n) * reciprocal(exactly(over));
  };
  const Interval order = term(3, 6.0) + term(9, 135.0) + term(15, 600.0);
  const Interval d_order = term(4, 2.0) + term(10, 15.0) + term(16, 40.0);
  const Interval d2_order = 2.0 * power(r, 5) + term(11, 1.5) + term(17, 2.5);
  return {exactly(1.0) - a.per_a * (x * s + m * order), -(a.per_a * (s - m * d_order)),
          -(a.per_a * (m * d2_order))};
}

Shape hull(const Shape& a, const Shape& b) noexcept {
  return {internal::hull(a.g, b.g), internal::hull(a.d1, b.d1),
          internal::hull(a.d2, b.d2)};
}

Shape enclose_shape(const Interval& x, double p) noexcept {
  const Constants a(p);
  if (x.hi <= 1.0) return hull(above_curie(x.lo, a), above_curie(x.hi, a));
  if (x.lo >= 1.0) return hull(below_curie(x.lo, p, a), below_curie(x.hi, p, a));
  return hull(hull(above_curie(x.lo, a), above_curie(1.0, a)),
              hull(below_curie(1.0, p, a), below_curie(x.hi, p, a)));
}

}  // namespace

MagneticEnclosure enclose_magnetic(double t, const Interval& curie,
                                   const Interval& moment, double p) noexcept {
  const Interval per_t = reciprocal(exactly(t));
  const Interval c{std::max(0.0, curie.lo), std::max(0.0, curie.hi)};
  const Interval b{std::max(0.0, moment.lo), std::max(0.0, moment.hi)};
  Interval x = c * per_t;
  x.lo = std::max(0.0, x.lo);
  const Shape s = enclose_shape(x, p);
  const Interval one_b = exactly(1.0) + b;
  Interval log_b = internal::log(one_b);
  log_b.lo = std::max(0.0, log_b.lo);
  const Interval slope_b = reciprocal(one_b);
  const Interval rt = kGasConstant * exactly(t);
  MagneticEnclosure e;
  e.value = rt * log_b * s.g;
  e.c = kGasConstant * (log_b * s.d1);
  e.cc = kGasConstant * (log_b * s.d2 * per_t);
  e.b = rt * slope_b * s.g;
  e.bb = -(rt * slope_b * slope_b * s.g);
  e.cb = kGasConstant * (slope_b * s.d1);
  return e;
}

}  // namespace gibbsteel::internal

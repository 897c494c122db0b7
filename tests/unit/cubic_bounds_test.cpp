/// What values and slopes at both ends say about a number in between, Eq. (T1).

#include <doctest/doctest.h>

#include <limits>

#include "scan/cubic_bounds.hpp"

using gibbsteel::internal::EndValues;
using gibbsteel::internal::is_monotonic;
using gibbsteel::internal::stays_positive;

namespace {

/// a + b t + c t^2 + d t^3 on [0, h].
EndValues ends_of(double a, double b, double c, double d, double h) {
  return {a, a + h * (b + h * (c + h * d)), b, b + h * (2.0 * c + 3.0 * h * d)};
}

}  // namespace

TEST_CASE("a parabola that dips below zero is not taken for positive") {
  // (t - 1)^2 - 0.01 on [0, 2] is 0.99 at both ends.
  CHECK_FALSE(stays_positive(ends_of(0.99, -2.0, 1.0, 0.0, 2.0), 2.0, 0.0));
  // (t - 1)^2 + 2 is not below 2, and its bound is 5/3.
  CHECK(stays_positive(ends_of(3.0, -2.0, 1.0, 0.0, 2.0), 2.0, 0.5));
  CHECK_FALSE(stays_positive(ends_of(3.0, -2.0, 1.0, 0.0, 2.0), 2.0, 1.7));
}

TEST_CASE("a tiny amount that only grows is positive throughout") {
  CHECK(stays_positive(ends_of(1e-9, 0.2, 0.02, 0.0, 5.0), 5.0, 0.0));
  CHECK(is_monotonic(ends_of(1e-9, 0.2, 0.02, 0.0, 5.0), 5.0));
  CHECK(is_monotonic(ends_of(1.0, -0.2, -0.02, 0.0, 5.0), 5.0));
}

TEST_CASE("values that rise between ends with falling slopes are not monotonic") {
  // t - t^2 + 1 rises, then falls: the ends are equal.
  CHECK_FALSE(is_monotonic(ends_of(1.0, 1.0, -1.0, 0.0, 1.0), 1.0));
  // Falls, rises, falls: (t - 0.2)(t - 0.5)(0.8 - t) changes sign inside twice.
  CHECK_FALSE(is_monotonic(ends_of(0.08, -0.66, 1.5, -1.0, 1.0), 1.0));
}

TEST_CASE("without a slope nothing is certain") {
  const double unknown = std::numeric_limits<double>::quiet_NaN();
  CHECK_FALSE(stays_positive({1.0, 1.0, unknown, 0.0}, 1.0, 0.0));
  CHECK_FALSE(is_monotonic({1.0, 2.0, 1.0, unknown}, 1.0));
}

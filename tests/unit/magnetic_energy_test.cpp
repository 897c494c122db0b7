/// The magnetic series at its branch point, and its limits.

#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>
#include <limits>

#include "lanes/magnetic_energy.hpp"

using gibbsteel::internal::one::magnetic_energy;
using gibbsteel::internal::one::magnetic_shape;

TEST_CASE("g and its slope are continuous at tau = 1, the curvature jumps") {
  for (const double p : {0.28, 0.40}) {
    CAPTURE(p);
    const auto below = magnetic_shape(std::nextafter(1.0, 0.0), p);
    const auto above = magnetic_shape(1.0, p);
    CHECK(below.g == doctest::Approx(above.g).epsilon(1e-12));
    CHECK(below.dg == doctest::Approx(above.dg).epsilon(1e-12));
    // Evaluated by hand from the series of Hillert & Jarl (1978):
    // -3.69 to -1.79 for p = 0.28, -3.54 to -2.69 for p = 0.40.
    CHECK(std::abs(below.dg2 - (p == 0.28 ? -3.69 : -3.54)) < 0.006);
    CHECK(std::abs(above.dg2 - (p == 0.28 ? -1.79 : -2.69)) < 0.006);
  }
}

TEST_CASE("full order: the energy at low temperature tends to -R T_C ln(beta + 1) k") {
  // At tau -> 0 the entropy of disorder R ln(beta + 1) is gone and the energy is the
  // enthalpy alone: T g -> -79 T_C / (140 p A).
  const double p = 0.40, k = 1.0 / p - 1.0;
  const double a = 518.0 / 1125.0 + 11692.0 / 15975.0 * k;
  const auto e = magnetic_energy(1e-3, 1043.0, 2.22, p);
  CHECK(e.value == doctest::Approx(-8.31446261815324 * std::log(3.22) * 79.0 * 1043.0 /
                                   (140.0 * p * a))
                       .epsilon(1e-5));
}

TEST_CASE("no order, no energy") {
  CHECK(magnetic_energy(1200.0, 0.0, 2.0, 0.28).value == 0.0);
  CHECK(magnetic_energy(1200.0, 500.0, 0.0, 0.28).value == 0.0);
}

TEST_CASE("what is no number stays none") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK(std::isnan(magnetic_energy(1200.0, nan, 2.0, 0.28).value));
  CHECK(std::isnan(magnetic_energy(1200.0, 500.0, nan, 0.28).value));
}

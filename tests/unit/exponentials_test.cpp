/// The library's own logarithm and exponential, Eq. (F1) and (F2). Reference: 50 digits
/// of Boost.Multiprecision.

#include "lanes/exponentials.hpp"

#include <doctest/doctest.h>

#include <boost/multiprecision/cpp_bin_float.hpp>
#include <random>

namespace one = gibbsteel::internal::one;

namespace {

using Exact = boost::multiprecision::cpp_bin_float_50;

/// Distance of `value` from `exact` in units in the last place of the result.
double ulps(double value, const Exact& exact) {
  const double rounded = exact.convert_to<double>();
  const double unit = std::ldexp(1.0, std::ilogb(rounded) - 52);
  return Exact(abs(Exact(value) - exact) / unit).convert_to<double>();
}

}  // namespace

TEST_CASE("logarithm: within one unit in the last place") {
  std::mt19937_64 random(20261126);
  std::uniform_real_distribution<double> u(0.0, 1.0);
  double worst = 0.0;
  for (int k = 0; k < 30000; ++k) {
    // Site fractions of all sizes, and the neighbourhood of 1, where ln x is small.
    const double x = k % 3 == 0   ? u(random)
                     : k % 3 == 1 ? std::exp(-700.0 * u(random))
                                  : 0.9 + 0.2 * u(random);
    worst = std::max(worst, ulps(one::logarithm(x), log(Exact(x))));
  }
  MESSAGE("largest error: " << worst << " ulp");
  CHECK(worst < 1.0);
}

TEST_CASE("logarithm: where it is exact, and where it has no value") {
  CHECK(one::logarithm(1.0) == 0.0);
  CHECK(one::logarithm(0.0) == -std::numeric_limits<double>::infinity());
  CHECK(one::logarithm(1e-310) == std::log(1e-310));
  CHECK(std::isnan(one::logarithm(-1.0)));
  CHECK(std::isnan(one::logarithm(std::numeric_limits<double>::quiet_NaN())));
}

TEST_CASE("exponential: within two units in the last place") {
  std::mt19937_64 random(20261126);
  std::uniform_real_distribution<double> u(-1.0, 1.0);
  double worst = 0.0;
  for (int k = 0; k < 30000; ++k) {
    const double x = (k % 3 == 0 ? 1.0 : k % 3 == 1 ? 20.0 : 700.0) * u(random);
    worst = std::max(worst, ulps(one::exponential(x), exp(Exact(x))));
  }
  MESSAGE("largest error: " << worst << " ulp");
  CHECK(worst < 2.0);
  CHECK(one::exponential(0.0) == 1.0);
  CHECK(one::exponential(-1e300) == one::exponential(-700.0));
  CHECK(one::exponential(1e300) == one::exponential(700.0));
}

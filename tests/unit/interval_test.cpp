/// Outward rounding: every interval operation against 50-digit arithmetic (oracle:
/// Boost.Multiprecision) on random operands of all sizes.

#include "proof/interval.hpp"

#include <doctest/doctest.h>

#include <boost/multiprecision/cpp_bin_float.hpp>
#include <random>

using namespace gibbsteel::internal;
using Real = boost::multiprecision::cpp_bin_float_50;

namespace {

constexpr int kTrials = 20000;

class Draw {
 public:
  /// Of random sign, from `least` to `most` in size, log-uniform.
  double number(double least, double most) {
    const double size = std::exp(
        std::log(least) + uniform_(random_) * (std::log(most) - std::log(least)));
    return uniform_(random_) < 0.5 ? -size : size;
  }
  double positive(double least, double most) { return std::abs(number(least, most)); }
  Interval interval(double least, double most) {
    const double a = number(least, most), b = number(least, most);
    return {std::min(a, b), std::max(a, b)};
  }
  Interval positive_interval(double least, double most) {
    const double a = positive(least, most), b = positive(least, most);
    return {std::min(a, b), std::max(a, b)};
  }
  /// A member, the ends as often as the inside.
  double member(const Interval& a) {
    const double u = uniform_(random_);
    if (u < 0.25) return a.lo;
    if (u < 0.5) return a.hi;
    return std::clamp(a.lo + uniform_(random_) * (a.hi - a.lo), a.lo, a.hi);
  }

 private:
  std::mt19937_64 random_{20261125};
  std::uniform_real_distribution<double> uniform_{0.0, 1.0};
};

bool holds(const Interval& enclosure, const Real& value) {
  return Real(enclosure.lo) <= value && value <= Real(enclosure.hi);
}

}  // namespace

TEST_CASE("sums, differences and products hold the exact result") {
  Draw draw;
  int missed = 0;
  for (int k = 0; k < kTrials; ++k) {
    const double least = k % 2 == 0 ? 1e-3 : 1e-160, most = k % 2 == 0 ? 1e3 : 1e150;
    const Interval a = draw.interval(least, most), b = draw.interval(least, most);
    const Real x = draw.member(a), y = draw.member(b);
    const double factor = draw.number(least, most);
    missed += !holds(a + b, x + y) + !holds(a - b, x - y) + !holds(a * b, x * y) +
              !holds(factor * a, Real(factor) * x) + !holds(-a, -x);
  }
  CHECK(missed == 0);
}

TEST_CASE("products that underflow hold the exact result") {
  Draw draw;
  int missed = 0;
  for (int k = 0; k < kTrials; ++k) {
    const Interval a = draw.interval(1e-300, 1e-150), b = draw.interval(1e-300, 1e-150);
    const Real x = draw.member(a), y = draw.member(b);
    missed += !holds(a * b, x * y);
  }
  CHECK(missed == 0);
}

TEST_CASE("reciprocal, logarithm, exponential and powers hold the exact result") {
  Draw draw;
  int missed = 0;
  for (int k = 0; k < kTrials / 4; ++k) {
    const Interval a = draw.positive_interval(1e-290, 1e290);
    const Real x = draw.member(a);
    missed += !holds(reciprocal(a), 1 / x) + !holds(log(a), Real(log(x)));
    const Interval e = draw.interval(1e-12, 600.0);
    missed += !holds(exp(e), Real(exp(Real(draw.member(e)))));
    const Interval p = draw.positive_interval(1e-6, 3.0);
    const Real q = draw.member(p);
    for (const int n : {1, 3, 5, 15, 25})
      missed += !holds(power(p, n), Real(pow(q, n)));
  }
  CHECK(missed == 0);
}

TEST_CASE("thin operands stay thin: a sum of products loses few digits") {
  Interval sum;
  Real exact = 0;
  for (int k = 1; k <= 100; ++k) {
    const Interval term = exactly(1.0 / k) * exactly(1e5 / (k + 1.0));
    sum += term;
    exact += Real(1.0 / k) * Real(1e5 / (k + 1.0));
  }
  CHECK(holds(sum, exact));
  CHECK(sum.width() < 1e-8);
}

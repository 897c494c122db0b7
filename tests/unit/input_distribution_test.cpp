/// Distributions and boxes of what scatters.

#include "tolerance/input_distribution.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace gibbsteel;
using namespace gibbsteel::internal;

namespace {

/// Mean and standard deviation by the midpoint rule over u: independent of the
/// formulas.
std::pair<double, double> moments(const TolerancedInput& input) {
  constexpr int kParts = 200'000;
  double sum = 0.0, squares = 0.0;
  for (int i = 0; i < kParts; ++i) {
    const double x = quantile_of(input, (i + 0.5) / kParts) - input.nominal;
    sum += x / kParts;
    squares += x * x / kParts;
  }
  return {input.nominal + sum, std::sqrt(squares - sum * sum)};
}

}  // namespace

TEST_CASE("a normal distribution far from zero") {
  const TolerancedInput cr = normal_input("Cr", "wt%", 4.5, 0.1);
  // Table of the normal distribution: 1.6449 standard deviations at 95 %.
  CHECK(quantile_of(cr, 0.95) == doctest::Approx(4.5 + 0.16449).epsilon(1e-5));
  CHECK(quantile_of(cr, 0.5) == doctest::Approx(4.5).epsilon(1e-14));
  CHECK(cr.mean == doctest::Approx(4.5).epsilon(1e-14));
  CHECK(cr.standard_deviation == doctest::Approx(0.1).epsilon(1e-6));
  CHECK(cr.low == doctest::Approx(4.3).epsilon(1e-14));
  CHECK(cr.high == doctest::Approx(4.7).epsilon(1e-14));
}

TEST_CASE("a normal distribution cut at zero: nothing negative, moments hold") {
  for (const double nominal : {0.0, 0.02, 0.1}) {
    CAPTURE(nominal);
    const TolerancedInput v = normal_input("V", "wt%", nominal, 0.05);
    CHECK(quantile_of(v, 1e-12) >= 0.0);
    const auto [mean, deviation] = moments(v);
    CHECK(v.mean == doctest::Approx(mean).epsilon(1e-5));
    CHECK(v.standard_deviation == doctest::Approx(deviation).epsilon(1e-4));
  }
  // Half-normal distribution: mean sd sqrt(2/pi) (textbook value).
  const TolerancedInput half = normal_input("Nb", "wt%", 0.0, 0.05);
  CHECK(half.mean ==
        doctest::Approx(0.05 * std::sqrt(2.0 / 3.141592653589793)).epsilon(1e-6));
  CHECK(half.low == 0.0);
}

TEST_CASE("a range is uniform") {
  const TolerancedInput c = uniform_input("C", "wt%", 0.55, 0.50, 0.60);
  CHECK(quantile_of(c, 0.25) == doctest::Approx(0.525).epsilon(1e-14));
  CHECK(c.mean == doctest::Approx(0.55).epsilon(1e-14));
  CHECK(c.standard_deviation == doctest::Approx(0.1 / std::sqrt(12.0)).epsilon(1e-14));
}

TEST_CASE("what scatters, in order; what does not is left out") {
  const Steel steel({{"C", 0.55}, {"Cr", 4.5}, {"V", 1.0}});
  HeatTolerances tolerances;
  tolerances.ranges = {{"V", 0.9, 1.1}, {"C", 0.55, 0.55}};
  tolerances.standard_deviations = {{"Cr", 0.1}};
  tolerances.furnace_error = 10.0;
  tolerances.segregation_percent = 5.0;
  const auto inputs = inputs_of(steel, Temperature::celsius(1120), tolerances);
  std::string names;
  for (const TolerancedInput& input : inputs) names += input.name + " ";
  CHECK(names == "V Cr temperature segregation ");
  CHECK(inputs[2].nominal == doctest::Approx(1120.0).epsilon(1e-12));
  CHECK(inputs[2].high == doctest::Approx(1130.0).epsilon(1e-12));
  CHECK(inputs[3].low == -5.0);
}

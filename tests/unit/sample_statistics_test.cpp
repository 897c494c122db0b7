/// Mean, deviation, percentile and correlation of lists.

#include "tolerance/sample_statistics.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace gibbsteel::internal;

TEST_CASE("Anscombe's first data set") {
  // F. J. Anscombe, Am. Stat. 27 (1973) 17 (from memory): mean of x 9, variance 11;
  // mean of y 7.50, variance 4.13; squared correlation 0.67.
  const std::vector<double> x{10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
  const std::vector<double> y{8.04, 6.95, 7.58,  8.81, 8.33, 9.96,
                              7.24, 4.26, 10.84, 4.82, 5.68};
  CHECK(mean_of(x) == doctest::Approx(9.0).epsilon(1e-14));
  CHECK(deviation_of(x) == doctest::Approx(std::sqrt(11.0)).epsilon(1e-14));
  CHECK(std::abs(mean_of(y) - 7.50) < 0.005);
  CHECK(std::abs(deviation_of(y) * deviation_of(y) - 4.13) < 0.005);
  CHECK(std::abs(squared_correlation(x, y) - 0.67) < 0.005);
}

TEST_CASE("percentiles interpolate as in Eq. (U3)") {
  // Type 7 of Hyndman & Fan 1996: the quartiles of 1, 2, 3, 4 are 1.75, 2.5, 3.25.
  const std::vector<double> values{1, 2, 3, 4};
  CHECK(percentile_of(values, 25) == 1.75);
  CHECK(percentile_of(values, 50) == 2.5);
  CHECK(percentile_of(values, 75) == 3.25);
  CHECK(percentile_of(std::vector<double>{7.0}, 95) == 7.0);
}

TEST_CASE("nothing to describe") {
  const std::vector<double> none, one{2.0}, same{0.1, 0.1, 0.1};
  CHECK(std::isnan(mean_of(none)));
  CHECK(std::isnan(percentile_of(none, 50)));
  CHECK(std::isnan(deviation_of(one)));
  CHECK(mean_of(same) == 0.1);
  CHECK(deviation_of(same) == 0.0);
  CHECK(squared_correlation(same, std::vector<double>{1, 2, 3}) == 0.0);
}

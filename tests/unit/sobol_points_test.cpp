/// Points that fill the unit cube evenly.

#include "tolerance/sobol_points.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>

using gibbsteel::internal::sobol_points;

TEST_CASE("one point in each of 2^k equal intervals, in every dimension") {
  // Defining property of a digital (t, s) sequence in base 2 in one dimension: Sobol
  // 1967. A digital shift keeps it. It fails when the origin is left out.
  constexpr std::size_t kDimensions = 12;
  for (const std::uint64_t seed : {1u, 2u, 77u})
    for (const std::size_t count : {2u, 64u, 256u}) {
      const auto points = sobol_points(count, kDimensions, seed);
      REQUIRE(points.size() == count * kDimensions);
      for (std::size_t d = 0; d < kDimensions; ++d) {
        std::set<std::size_t> cells;
        for (std::size_t i = 0; i < count; ++i)
          cells.insert(static_cast<std::size_t>(points[i * kDimensions + d] *
                                                static_cast<double>(count)));
        CHECK(cells.size() == count);
      }
    }
}

TEST_CASE("the first two dimensions are a (0, 2) sequence") {
  // 2^k points put one into each of the 2^k boxes of every shape 2^-a by 2^-(k-a):
  // Niederreiter 1987, for the first two coordinates of Sobol's sequence.
  const auto points = sobol_points(64, 2, 5);
  for (int a = 0; a <= 6; ++a) {
    const double wide = std::exp2(a), high = std::exp2(6 - a);
    std::set<std::pair<int, int>> boxes;
    for (std::size_t i = 0; i < 64; ++i)
      boxes.insert({static_cast<int>(points[2 * i] * wide),
                    static_cast<int>(points[2 * i + 1] * high)});
    CHECK(boxes.size() == 64);
  }
}

TEST_CASE("same seed, same points; fewer are the first of more; never 0 or 1") {
  const auto many = sobol_points(1000, 5, 3);
  const auto few = sobol_points(10, 5, 3);
  CHECK(std::equal(few.begin(), few.end(), many.begin()));
  CHECK(many == sobol_points(1000, 5, 3));
  CHECK(many != sobol_points(1000, 5, 4));
  const auto [low, high] = std::minmax_element(many.begin(), many.end());
  CHECK(*low > 0.0);
  CHECK(*high < 1.0);
}

TEST_CASE("a smooth integral is far closer than that of random points") {
  // Product of 1 + (x - 1/2): integral 1. Random points would be off by about
  // sqrt(((13/12)^6 - 1)/1024) = 0.025.
  const auto points = sobol_points(1024, 6, 11);
  double sum = 0.0;
  for (std::size_t i = 0; i < 1024; ++i) {
    double product = 1.0;
    for (std::size_t d = 0; d < 6; ++d) product *= 0.5 + points[6 * i + d];
    sum += product / 1024.0;
  }
  CHECK(std::abs(sum - 1.0) < 0.0025);
}

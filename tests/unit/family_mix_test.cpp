// Estimates of a steel between families of steels: bands, and whether it matters.

#include "internal/family_mix.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "internal/mixed_estimate.hpp"

using namespace gibbsteel;

namespace {

HardeningEstimates with_start(double value, double low, double high) {
  HardeningEstimates one;
  one.martensite_start.value = value;
  one.martensite_start.low = low;
  one.martensite_start.high = high;
  return one;
}

/// In halves.
Estimate mixed(HardeningEstimates a, HardeningEstimates b, const char* unit) {
  a.martensite_start.unit = b.martensite_start.unit = unit;
  return internal::mixed_estimate({a, b}, &HardeningEstimates::martensite_start,
                                  {{"high-speed", 0.5}, {"general", 0.5}});
}

/// Rates and offsets of two families, a share of the second.
bool moved(const HardeningFamily& main, const HardeningFamily& other, double share) {
  return internal::is_moved({{&main, {1.0 - share, 0.0}}, {&other, {share, 0.0}}});
}

}  // namespace

TEST_CASE("the band of a mixed estimate holds what the families differ by") {
  const Estimate found =
      mixed(with_start(200.0, 190.0, 220.0), with_start(260.0, 240.0, 270.0), "C");
  CHECK(found.value == doctest::Approx(230.0));
  // (H29): mean of the squares of each side, and of what each is off the mean.
  CHECK(found.low == doctest::Approx(230.0 - std::sqrt(0.5 * (100.0 + 400.0) + 900.0)));
  CHECK(found.high ==
        doctest::Approx(230.0 + std::sqrt(0.5 * (400.0 + 100.0) + 900.0)));
}

TEST_CASE("the band of a mixed amount stays within 0 and 100 %") {
  const Estimate much =
      mixed(with_start(98.0, 90.0, 100.0), with_start(90.0, 80.0, 100.0), "vol%");
  CHECK(much.value == doctest::Approx(94.0));
  CHECK(much.high == 100.0);
  const Estimate little =
      mixed(with_start(2.0, 0.0, 5.0), with_start(10.0, 0.0, 15.0), "vol%");
  CHECK(little.low == 0.0);
  CHECK(little.high < 100.0);
}

TEST_CASE("the band of a mixed hardness ends at 0, with no upper end of its own") {
  const Estimate found =
      mixed(with_start(50.0, 0.0, 150.0), with_start(300.0, 0.0, 400.0), "HV");
  CHECK(found.low == 0.0);
  CHECK(found.high > 300.0);
}

TEST_CASE("the band of a mixed temperature ends at absolute zero") {
  const Estimate found = mixed(with_start(-200.0, -273.15, -150.0),
                               with_start(-260.0, -273.15, -200.0), "C");
  CHECK(found.low == -273.15);
}

TEST_CASE("a mixture matters from 10 C, 15 HV or a tenth of the rate on") {
  HardeningFamily main, other;
  main.transformation_rate = other.transformation_rate = 0.01;
  CHECK_FALSE(moved(main, other, 0.5));
  other.transformation_rate = 0.0119;
  CHECK_FALSE(moved(main, other, 0.5));
  other.transformation_rate = 0.0121;
  CHECK(moved(main, other, 0.5));
  other.transformation_rate = 0.0079;
  CHECK(moved(main, other, 0.5));
  other = main;
  other.start_offset = -19.9;
  CHECK_FALSE(moved(main, other, 0.5));
  other.start_offset = -20.1;
  CHECK(moved(main, other, 0.5));
  other = main;
  other.hardness_offset = 29.9;
  CHECK_FALSE(moved(main, other, 0.5));
  other.hardness_offset = 30.1;
  CHECK(moved(main, other, 0.5));
}

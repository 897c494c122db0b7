/// Searches by estimates of hardening: how steep they are, and what a measurement may
/// be where the mean never reaches the value.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/composition_for.hpp"
#include "gibbsteel/hardening.hpp"
#include "gibbsteel/hardening_quantities.hpp"
#include "gibbsteel/timed_soak.hpp"
#include "internal/number_format.hpp"

using namespace gibbsteel;

namespace {

/// AISI M2 at the low end of its carbon.
Steel m2() {
  return Steel({{"C", 0.85},
                {"Cr", 4.15},
                {"Mo", 4.95},
                {"W", 6.28},
                {"V", 1.86},
                {"Mn", 0.28},
                {"Si", 0.33}},
               {"M2", {}, false});
}

Steel punch_heat() {
  return Steel(
      {{"C", 0.56}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}, {"Mn", 0.3}},
      {"punch heat", {}, false});
}

TemperatureRange range(double low, double high) {
  return {Temperature::celsius(low), Temperature::celsius(high)};
}

double hardness(const Steel& steel, double celsius) {
  return hardening(steel.soak(Temperature::celsius(celsius))).hardness_hrc.value;
}

std::string whole(double value) { return internal::fixed(value, 0); }

std::string three(double value) { return internal::significant(value, 3); }

}  // namespace

TEST_CASE("a hardness that the mean never reaches may still be measured") {
  const auto found =
      temperature_for(m2(), quantities::hardness_hrc(), 65, range(1000, 1220));
  REQUIRE(found.status == TargetStatus::never_reached);
  const auto at = found.highest.temperature;
  const Estimate estimate = hardening(m2().soak(at)).hardness_hrc;
  CHECK(found.band_of_nearest.low == doctest::Approx(estimate.low).epsilon(1e-9));
  CHECK(found.band_of_nearest.high == doctest::Approx(estimate.high).epsilon(1e-9));
  CHECK(found.highest.value < 65);
  CHECK(found.band_of_nearest.high > 65);
  const auto number = [](double value) {
    return internal::significant(value, 4) + " HRC";
  };
  CHECK(
      found.text.ends_with(" in the range and never 65 HRC, though a measurement may "
                           "lie between " +
                           number(estimate.low) + " and " + number(estimate.high) +
                           " at " + internal::fixed(at.in_celsius(), 0) + " C"));
}

TEST_CASE("nothing is said of a measurement far away, nor of what is no estimate") {
  const auto far =
      temperature_for(m2(), quantities::hardness_hrc(), 72, range(1000, 1220));
  CHECK(far.band_of_nearest.high < 72);
  CHECK(far.text.ends_with(" in the range and never 72 HRC"));
  const auto carbon =
      temperature_for(m2(), quantities::matrix("C"), 0.8, range(1000, 1220));
  REQUIRE(carbon.status == TargetStatus::never_reached);
  CHECK(std::isnan(carbon.band_of_nearest.high));
  CHECK(carbon.text.ends_with(" in the range and never 0.8 wt%"));
}

TEST_CASE("slope of a crossing: that of soaks beside it, and told of an estimate") {
  const auto found =
      temperature_for(punch_heat(), quantities::hardness_hrc(), 62, range(900, 1050));
  REQUIRE(found.crossings.size() == 1);
  const Crossing& crossing = found.crossings.front();
  const double celsius = crossing.temperature.in_celsius();
  const double apart =
      hardness(punch_heat(), celsius + 0.5) - hardness(punch_heat(), celsius - 0.5);
  CHECK(crossing.slope == doctest::Approx(apart).epsilon(1e-3));
  const Estimate there =
      hardening(punch_heat().soak(crossing.temperature)).hardness_hrc;
  CHECK(crossing.band.low == doctest::Approx(there.low).epsilon(1e-9));
  CHECK(crossing.band.high == doctest::Approx(there.high).epsilon(1e-9));
  const std::string measured =
      ", measured perhaps " + three(there.low) + " to " + three(there.high) + ")";
  CHECK(found.text.find("(rising, 1 HRC in " + whole(1.0 / crossing.slope) + " C" +
                        measured) != std::string::npos);
  CHECK(std::isnan(found.band_of_nearest.low));

  SoakOptions fahrenheit;
  fahrenheit.temperature_unit = TemperatureUnit::fahrenheit;
  const auto again = temperature_for(punch_heat(), quantities::hardness_hrc(), 62,
                                     range(900, 1050), fahrenheit);
  CHECK(again.text.find("(rising, 1 HRC in " + whole(1.0 / crossing.slope) + " C, " +
                        whole(1.8 / crossing.slope) + " F" + measured) !=
        std::string::npos);

  const auto carbon =
      temperature_for(punch_heat(), quantities::matrix("C"), 0.4, range(900, 1150));
  REQUIRE(carbon.crossings.size() == 1);
  CHECK(carbon.crossings.front().slope > 0.0);
  CHECK(carbon.text.find("(rising, at least +-") != std::string::npos);
}

TEST_CASE("where an estimate does not change within what was searched it is flat") {
  const double top =
      temperature_for(m2(), quantities::hardness_hrc(), 65, range(1000, 1220))
          .highest.value;
  const auto found =
      temperature_for(m2(), quantities::hardness_hrc(), top - 1e-4, range(1000, 1220));
  REQUIRE_FALSE(found.crossings.empty());
  CHECK(found.text.find("(rising, flat here, measured perhaps ") != std::string::npos);
}

TEST_CASE("slope along a composition") {
  const auto found = composition_for(punch_heat(), "C", quantities::martensite_start(),
                                     220, {0.45, 0.6}, Temperature::celsius(1120));
  REQUIRE(found.crossings.size() == 1);
  const CompositionCrossing& crossing = found.crossings.front();
  const auto start = [](double carbon) {
    Steel steel({{"C", carbon},
                 {"Cr", 4.5},
                 {"Mo", 2.75},
                 {"W", 2.0},
                 {"V", 1.0},
                 {"Mn", 0.3}});
    return hardening(steel.soak(Temperature::celsius(1120))).martensite_start.value;
  };
  const double at = crossing.weight_percent;
  const double apart = (start(at + 5e-4) - start(at - 5e-4)) / 1e-3;
  CHECK(crossing.slope == doctest::Approx(apart).epsilon(1e-3));
  CHECK(found.text.ends_with("(falling, 10 C in " +
                             internal::significant(-10.0 / crossing.slope, 2) +
                             " wt%, measured perhaps " + three(crossing.band.low) +
                             " to " + three(crossing.band.high) + ")"));
}

TEST_CASE("a function of one's own may rest on more than the soak: nothing is told") {
  const auto own = [](const State& state) {
    return state.matrix.weight_percent["C"] - 0.4;
  };
  const Quantity difference("difference", "wt%", own);
  const auto found = temperature_for(punch_heat(), difference, 0, range(900, 1150));
  REQUIRE(found.crossings.size() == 1);
  CHECK(std::isnan(found.crossings.front().slope));
  CHECK(std::isnan(found.crossings.front().uncertainty_at_least));
  CHECK(found.text.ends_with("(rising)"));

  const Quantity with_slope("difference", "wt%", own,
                            [](const State&, const StateSlope& slope) {
                              return slope.matrix.weight_percent["C"];
                            });
  const auto told = temperature_for(punch_heat(), with_slope, 0, range(900, 1150));
  REQUIRE(told.crossings.size() == 1);
  CHECK(told.crossings.front().slope > 0.0);
  CHECK(told.crossings.front().uncertainty_at_least > 0.0);

  CHECK(difference.may_rest_on_more());
  CHECK(quantities::after_minutes(difference, 30).may_rest_on_more());
  CHECK_FALSE(with_slope.may_rest_on_more());
  CHECK_FALSE(quantities::after_minutes(with_slope, 30).may_rest_on_more());
}

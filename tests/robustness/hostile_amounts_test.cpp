/// Amounts and temperatures at the edge of what a double holds: refused with a code,
/// flagged, or right; never silently wrong.

#include <doctest/doctest.h>

#include <limits>
#include <numeric>

#include "fuzz/solve_checks.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/steel.hpp"

using namespace gibbsteel;

namespace {

using Limits = std::numeric_limits<double>;

constexpr double kDenormal = 4.9406564584124654e-324;

std::string refusal(const NamedValues& weight_percent) {
  try {
    Steel steel(weight_percent);
  } catch (const InputError& error) {
    return error.what();
  }
  return "";
}

const PhaseSystem& system() {
  static const PhaseSystem result(default_parameters(), {"Fe", "C", "Cr"},
                                  {"austenite", "ferrite", "M3C", "M7C3", "M23C6"});
  return result;
}

Equilibrium solved(Temperature t, std::vector<double> x) {
  auto result = minimize(system(), t, x);
  fuzz::check_result(system(), x, result);
  return result;
}

}  // namespace

TEST_CASE("weight percents that are no amounts are all named") {
  CHECK(
      refusal({{"C", Limits::quiet_NaN()},
               {"Cr", Limits::infinity()},
               {"Mo", -Limits::infinity()},
               {"W", -kDenormal},
               {"V", Limits::max()}}) ==
      "[gibbsteel.input.202] composition, C: is nan, not a number; give weight "
      "percent, or leave the element out where it was not measured\n"
      "[gibbsteel.input.202] composition, Cr: is inf, not a finite number; give weight "
      "percent, from 0 to 100\n"
      "[gibbsteel.input.202] composition, Mo: is -inf, not a finite number; give "
      "weight percent, from 0 to 100\n"
      "[gibbsteel.input.203] composition, W: is negative: -5e-324; give weight "
      "percent, from 0 to 100\n"
      "[gibbsteel.input.204] composition, V: is above 100: "
      "1.7976931348623157e+308; give weight percent, from 0 to 100");
}

TEST_CASE("names that could steer a terminal are shown without their teeth") {
  CHECK(
      refusal({{"C\x1B[2J\nerror: none", 0.5}}) ==
      "[gibbsteel.input.201] composition: 'C?[2J?error: none' is not the symbol of an "
      "element; give symbols such as C, Cr, Mo");
  const std::string said = refusal({{std::string(1'000'000, 'x'), 0.5}});
  CHECK(said == "[gibbsteel.input.201] composition: '" + std::string(1999, 'x') +
                    "...; give symbols such as C, Cr, Mo");
}

TEST_CASE("amounts that are next to nothing leave the steel as it is without them") {
  const auto t = Temperature::celsius(1050.0);
  const State plain = Steel({{"C", 0.8}, {"Cr", 5.0}}).soak(t);
  REQUIRE(plain.usable());
  for (const double tiny : {1e-30, 1e-300, Limits::min(), kDenormal, 0.0}) {
    CAPTURE(tiny);
    const Steel steel({{"C", 0.8}, {"Cr", 5.0}, {"W", tiny}});
    CHECK(steel.elements() == std::vector<std::string>{"Fe", "C", "Cr"});
    const State state = steel.soak(t);
    REQUIRE(state.usable());
    CHECK(state.carbide_volume_percent == plain.carbide_volume_percent);
  }
}

TEST_CASE("traces down to the smallest number are solved or flagged") {
  int usable = 0, all = 0;
  for (const double trace : {1e-9, 1e-15, 1e-30, 1e-100, 1e-300, kDenormal})
    for (const double celsius : {750.0, 1100.0}) {
      CAPTURE(trace);
      CAPTURE(celsius);
      ++all;
      const auto result =
          solved(Temperature::celsius(celsius), {0.9 - trace, 0.1, trace});
      usable += result.report.usable() ? 1 : 0;
    }
  MESSAGE(usable << " of " << all << " usable");
  CHECK(usable >= all / 2);
}

TEST_CASE("the minimizer at temperatures of no furnace") {
  for (const double kelvin :
       {kDenormal, 1e-300, 1e-3, 1.0, 50.0, 1e4, 1e6, 1e30, 1e300, Limits::max()}) {
    CAPTURE(kelvin);
    const auto result = solved(Temperature::kelvin(kelvin), {0.85, 0.05, 0.1});
    MESSAGE(kelvin << " K: " << result.report.brief());
  }
  for (const double kelvin : {Limits::quiet_NaN(), Limits::infinity(), -0.0, 0.0})
    CHECK_THROWS_AS(solved(Temperature::kelvin(kelvin), {0.85, 0.05, 0.1}), InputError);
}

TEST_CASE("a soak at temperatures of no furnace is refused") {
  const Steel steel({{"C", 0.8}, {"Cr", 5.0}});
  for (const double kelvin :
       {Limits::quiet_NaN(), Limits::infinity(), -Limits::infinity(), kDenormal, 0.0,
        299.0, 2501.0, Limits::max()}) {
    CAPTURE(kelvin);
    try {
      steel.soak(Temperature::kelvin(kelvin));
      FAIL("not refused");
    } catch (const InputError& error) {
      CHECK(error.code() == "gibbsteel.input.210");
    }
  }
}

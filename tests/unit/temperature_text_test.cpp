/// Temperatures in printed results, in the unit of the call.

#include "internal/temperature_text.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/unit_hint.hpp"

using namespace gibbsteel;
using internal::at_least;
using internal::degree_cells;
using internal::degree_numbers;
using internal::degrees;
using internal::degrees_inside;
using internal::degrees_with_error;
using internal::unit_hint;
using enum TemperatureUnit;

namespace {

const TemperatureRange kRange{Temperature::celsius(900), Temperature::celsius(1230)};

}  // namespace

TEST_CASE("C alone, or the other unit beside it") {
  CHECK(degrees(Temperature::celsius(1120)) == "1120 C");
  CHECK(degrees(Temperature::celsius(1120), fahrenheit) == "1120 C (2048 F)");
  CHECK(degrees(Temperature::celsius(1120), kelvin) == "1120 C (1393 K)");
  CHECK(degrees_inside(Temperature::celsius(1120), celsius) == "1120 C");
  CHECK(degrees_inside(Temperature::celsius(1120), kelvin) == "1120 C, 1393 K");
  CHECK(degrees(kRange) == "900 to 1230 C");
  CHECK(degrees(kRange, fahrenheit) == "900 to 1230 C (1652 to 2246 F)");
}

TEST_CASE("a second place only where neighbours would read alike") {
  const Temperature low = Temperature::celsius(727.1),
                    high = Temperature::celsius(727.4);
  CHECK(degrees({low, high}) == "727.10 to 727.40 C");
  CHECK(degrees({low, high}, fahrenheit) ==
        "727.10 to 727.40 C (1340.78 to 1341.32 F)");
  const std::vector<Temperature> far{Temperature::fahrenheit(2000),
                                     Temperature::fahrenheit(2050)};
  CHECK(degree_numbers(far, celsius) == std::vector<std::string>{"1093", "1121"});
  CHECK(degree_cells(far, celsius) == std::vector<std::string>{"1093", "1121"});
  CHECK(degree_cells(far, fahrenheit) ==
        std::vector<std::string>{"1093 (2000 F)", "1121 (2050 F)"});
  CHECK(degree_cells(std::vector{low, high, high}, celsius) ==
        std::vector<std::string>{"727.10", "727.40", "727.40"});
}

TEST_CASE("how unsure a temperature is at least") {
  CHECK(at_least(13.2, celsius) == "at least +-13 C");
  CHECK(at_least(13.2, fahrenheit) == "at least +-13 C, +-24 F");
  CHECK(at_least(13.2, kelvin) == "at least +-13 C, +-13 K");
  CHECK(at_least(0.4, celsius).empty());
  CHECK(at_least(std::nan(""), celsius).empty());
  CHECK(internal::in_brackets("a") == " (a)");
  CHECK(internal::in_brackets("").empty());
}

TEST_CASE("an error is that of a difference") {
  const Temperature solidus = Temperature::celsius(1265);
  CHECK(degrees_with_error(solidus, 30.0, celsius) == "1265 C +-30");
  CHECK(degrees_with_error(solidus, 30.0, kelvin) == "1265 C +-30 (1538 K +-30)");
  CHECK(degrees_with_error(solidus, 30.0, fahrenheit) == "1265 C +-30 (2309 F +-54)");
}

TEST_CASE("a margin below the low end of an error bar adds up") {
  CHECK(internal::degrees_apart(12.5, celsius) == "12.5 C");
  CHECK(internal::degrees_apart(30.0, kelvin) == "30 C (30 K)");
  const Temperature start = Temperature::celsius(1240);
  CHECK(internal::below_low_end(start, 30.0, 12.0, celsius) ==
        "30 C below 1228 C, the low end of ");
  CHECK(internal::below_low_end(start, 30.0, 12.0, fahrenheit) ==
        "30 C (54 F) below 1228 C (2242 F), the low end of ");
}

TEST_CASE("a hint only where the number is far outside and another unit fits") {
  CHECK(unit_hint(Temperature::celsius(1100), celsius, kRange).empty());
  CHECK(unit_hint(Temperature::celsius(1240), celsius, kRange).empty());
  CHECK(unit_hint(Temperature::celsius(1290), celsius, kRange) ==
        "did you mean 1290 K (1017 C)?");
  CHECK(unit_hint(Temperature::celsius(2000), celsius, kRange) ==
        "did you mean 2000 F (1093 C)?");
  CHECK(unit_hint(Temperature::kelvin(1120), kelvin, kRange) == "did you mean 1120 C?");
  CHECK(unit_hint(Temperature::celsius(5000), celsius, kRange).empty());
  CHECK(internal::as_given(Temperature::fahrenheit(2050.5), fahrenheit) == "2050.5 F");
}

TEST_CASE("units have names") {
  for (const TemperatureUnit unit : {celsius, fahrenheit, kelvin})
    CHECK(temperature_unit(to_string(unit)) == unit);
  CHECK_THROWS_WITH_AS(temperature_unit("F"),
                       "[gibbsteel.input.286] temperature_unit: is 'F'; give celsius, "
                       "fahrenheit or kelvin",
                       InputError);
}

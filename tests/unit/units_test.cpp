#include <doctest/doctest.h>

#include "gibbsteel/named_values.hpp"
#include "gibbsteel/units.hpp"

using namespace gibbsteel;

TEST_CASE("temperatures: fixed points of the scales") {
  // Ice point 0 C = 32 F = 273.15 K; steam point 100 C = 212 F: definitions.
  CHECK(Temperature::celsius(0.0).in_kelvin() == 273.15);
  CHECK(Temperature::fahrenheit(32.0).in_kelvin() == 273.15);
  CHECK(Temperature::fahrenheit(212.0).in_celsius() == doctest::Approx(100.0));
  CHECK(Temperature::celsius(1120.0).in_fahrenheit() == doctest::Approx(2048.0));
  CHECK(Temperature::kelvin(300.0) < Temperature::celsius(27.0));
}

TEST_CASE("named values keep their order and read 0 for what is not there") {
  NamedValues values{{"C", 0.5}, {"Cr", 4.0}};
  values.set("C", 0.6);
  values.set("V", 1.0);
  CHECK(values.begin()->first == "C");
  CHECK(values["C"] == 0.6);
  CHECK(values["Mo"] == 0.0);
  CHECK_FALSE(values.contains("Mo"));
  CHECK(values.sum() == doctest::Approx(5.6));
}

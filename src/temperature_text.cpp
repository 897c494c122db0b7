#include "internal/temperature_text.hpp"

#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

std::string number(Temperature t, TemperatureUnit unit, int digits = 0) {
  return fixed(in_unit(t, unit), digits);
}

double difference(double kelvin, TemperatureUnit unit) {
  return unit == TemperatureUnit::fahrenheit ? 1.8 * kelvin : kelvin;
}

/// The text in C and, in brackets, the same in another unit.
template <typename Text>
std::string beside(TemperatureUnit unit, const Text& text) {
  const std::string celsius = text(TemperatureUnit::celsius);
  return unit == TemperatureUnit::celsius ? celsius : celsius + " (" + text(unit) + ")";
}

}  // namespace

const char* symbol_of(TemperatureUnit unit) noexcept {
  if (unit == TemperatureUnit::celsius) return "C";
  return unit == TemperatureUnit::fahrenheit ? "F" : "K";
}

std::string degrees(Temperature t, TemperatureUnit unit) {
  return beside(unit, [&](TemperatureUnit shown) {
    return number(t, shown) + " " + symbol_of(shown);
  });
}

std::string degrees_inside(Temperature t, TemperatureUnit unit) {
  const std::string celsius = degrees(t);
  return unit == TemperatureUnit::celsius
             ? celsius
             : celsius + ", " + number(t, unit) + " " + symbol_of(unit);
}

std::string degrees(const TemperatureRange& range, TemperatureUnit unit, int digits) {
  return beside(unit, [&](TemperatureUnit shown) {
    return number(range.low, shown, digits) + " to " +
           number(range.high, shown, digits) + " " + symbol_of(shown);
  });
}

std::string degrees_with_error(Temperature t, double error, TemperatureUnit unit) {
  return beside(unit, [&](TemperatureUnit shown) {
    return number(t, shown) + " " + symbol_of(shown) + " +-" +
           fixed(difference(error, shown), 0);
  });
}

std::string degrees_apart(double kelvin, TemperatureUnit unit) {
  return beside(unit, [&](TemperatureUnit shown) {
    const std::string size = shown == TemperatureUnit::fahrenheit
                                 ? fixed(difference(kelvin, shown), 0)
                                 : shortest(kelvin);
    return size + " " + symbol_of(shown);
  });
}

std::string below_low_end(Temperature start, double margin, double error,
                          TemperatureUnit unit) {
  const Temperature low = Temperature::kelvin(start.in_kelvin() - error);
  return degrees_apart(margin, unit) + " below " + degrees(low, unit) +
         ", the low end of ";
}

}  // namespace gibbsteel::internal

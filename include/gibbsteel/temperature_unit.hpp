#pragma once
/// The unit in which a user gives temperatures, and reads them.

#include <string_view>

#include "gibbsteel/units.hpp"

namespace gibbsteel {

/// Only ever appended.
enum class TemperatureUnit { celsius, fahrenheit, kelvin };
std::string_view to_string(TemperatureUnit) noexcept;  ///< "celsius"

/// @throws InputError gibbsteel.input.286
TemperatureUnit temperature_unit(std::string_view name);

constexpr double in_unit(Temperature t, TemperatureUnit unit) {
  if (unit == TemperatureUnit::celsius) return t.in_celsius();
  return unit == TemperatureUnit::fahrenheit ? t.in_fahrenheit() : t.in_kelvin();
}

/// A number that was given in a unit.
constexpr Temperature temperature_in(TemperatureUnit unit, double value) {
  if (unit == TemperatureUnit::celsius) return Temperature::celsius(value);
  return unit == TemperatureUnit::fahrenheit ? Temperature::fahrenheit(value)
                                             : Temperature::kelvin(value);
}

}  // namespace gibbsteel

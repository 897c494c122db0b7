#include "gibbsteel/temperature_unit.hpp"

#include <array>
#include <string>

#include "gibbsteel/errors.hpp"

namespace gibbsteel {

std::string_view to_string(TemperatureUnit unit) noexcept {
  if (unit == TemperatureUnit::fahrenheit) return "fahrenheit";
  return unit == TemperatureUnit::kelvin ? "kelvin" : "celsius";
}

TemperatureUnit temperature_unit(std::string_view name) {
  using enum TemperatureUnit;
  for (const TemperatureUnit unit : std::array{celsius, fahrenheit, kelvin})
    if (to_string(unit) == name) return unit;
  throw InputError(
      {{"gibbsteel.input.286", "temperature_unit", "is '" + std::string(name) + "'",
        "give celsius, fahrenheit or kelvin"}});
}

}  // namespace gibbsteel

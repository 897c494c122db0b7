#include "internal/unit_hint.hpp"

#include <array>

#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"

namespace gibbsteel::internal {
namespace {

/// So far above the end of what is sensible nobody goes on purpose [K]: 1310 C is not
/// meant as 1310 F.
double far_above(TemperatureUnit read_as) {
  return read_as == TemperatureUnit::fahrenheit ? 100.0 : 50.0;
}

bool is_far_outside(Temperature given, const TemperatureRange& sensible,
                    TemperatureUnit read_as) {
  return given < sensible.low ||
         given.in_kelvin() > sensible.high.in_kelvin() + far_above(read_as);
}

/// Without the rounding of the way through kelvin.
std::string number_in(Temperature given, TemperatureUnit unit) {
  return significant(in_unit(given, unit), 7);
}

}  // namespace

std::string as_given(Temperature given, TemperatureUnit unit) {
  return number_in(given, unit) + " " + symbol_of(unit);
}

std::string unit_hint(Temperature given, TemperatureUnit unit,
                      const TemperatureRange& sensible) {
  using enum TemperatureUnit;
  const std::string number = number_in(given, unit);
  std::string readings;
  for (const TemperatureUnit other : std::array{celsius, fahrenheit, kelvin}) {
    const Temperature read = temperature_in(other, in_unit(given, unit));
    if (other == unit || !is_far_outside(given, sensible, other) ||
        read < sensible.low || read > sensible.high)
      continue;
    readings += (readings.empty() ? "" : " or ") + number + " " + symbol_of(other);
    if (other != celsius) readings += " (" + degrees(read) + ")";
  }
  return readings.empty() ? "" : "did you mean " + readings + "?";
}

}  // namespace gibbsteel::internal

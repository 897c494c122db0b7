#pragma once
/// A question for numbers that make sense in another unit.

#include <string>

#include "gibbsteel/temperature_range.hpp"
#include "gibbsteel/temperature_unit.hpp"

namespace gibbsteel::internal {

/// "did you mean 2050 F (1121 C)?", with the number as it was given in `unit`; empty
/// when `given` is not far outside `sensible` or no other unit brings it inside.
std::string unit_hint(Temperature given, TemperatureUnit unit,
                      const TemperatureRange& sensible);

/// "2050 K": the number as it was given.
std::string as_given(Temperature given, TemperatureUnit unit);

}  // namespace gibbsteel::internal

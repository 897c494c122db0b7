#pragma once
/// Temperatures in printed results: in C, and beside it in the unit of the call.

#include <string>

#include "gibbsteel/temperature_range.hpp"
#include "gibbsteel/temperature_unit.hpp"

namespace gibbsteel::internal {

/// "1120 C", "1120 C (2048 F)" or "1120 C (1393 K)"
std::string degrees(Temperature t, TemperatureUnit unit = TemperatureUnit::celsius);

/// "1120 C" or "1120 C, 2048 F", for a place between brackets
std::string degrees_inside(Temperature t, TemperatureUnit unit);

/// "900 to 1230 C", "900 to 1230 C (1652 to 2246 F)"
/// @param digits  behind the point
std::string degrees(const TemperatureRange& range,
                    TemperatureUnit unit = TemperatureUnit::celsius, int digits = 0);

/// "1265 C +-30", "1265 C +-30 (2309 F +-54)"; the error in K
std::string degrees_with_error(Temperature t, double error, TemperatureUnit unit);

/// "30 C", "30 C (54 F)": a difference [K]
std::string degrees_apart(double kelvin, TemperatureUnit unit);

/// "30 C below 1228 C, the low end of ", to be followed by what melts at `start` +-
/// `error` [K]
std::string below_low_end(Temperature start, double margin, double error,
                          TemperatureUnit unit);

/// "F", "K" or "C"
const char* symbol_of(TemperatureUnit unit) noexcept;

}  // namespace gibbsteel::internal

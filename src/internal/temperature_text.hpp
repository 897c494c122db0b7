#pragma once
/// Temperatures in printed results: in C, and beside it in the unit of the call.

#include <span>
#include <string>
#include <vector>

#include "gibbsteel/temperature_range.hpp"
#include "gibbsteel/temperature_unit.hpp"

namespace gibbsteel::internal {

/// "1120 C", "1120 C (2048 F)" or "1120 C (1393 K)"
std::string degrees(Temperature t, TemperatureUnit unit = TemperatureUnit::celsius);

/// "1120 C" or "1120 C, 2048 F", for a place between brackets
std::string degrees_inside(Temperature t, TemperatureUnit unit);

/// "900 to 1230 C", "900 to 1230 C (1652 to 2246 F)"; two places behind the point where
/// both ends would read alike
std::string degrees(const TemperatureRange& range,
                    TemperatureUnit unit = TemperatureUnit::celsius);

/// Numbers of a series, whole degrees; two places behind the point where neighbours
/// that differ would read alike.
std::vector<std::string> degree_numbers(std::span<const Temperature> series,
                                        TemperatureUnit unit);

/// "1093", "1093 (2000 F)": such a series below a heading that says C
std::vector<std::string> degree_cells(std::span<const Temperature> series,
                                      TemperatureUnit unit);

/// "1265 C +-30", "1265 C +-30 (2309 F +-54)"; the error in K
std::string degrees_with_error(Temperature t, double error, TemperatureUnit unit);

/// "30 C", "30 C (54 F)": a difference [K]
std::string degrees_apart(double kelvin, TemperatureUnit unit);

/// "30 C below 1228 C, the low end of ", to be followed by what melts at `start` +-
/// `error` [K]
std::string below_low_end(Temperature start, double margin, double error,
                          TemperatureUnit unit);

/// "at least +-13 C", "at least +-13 C, +-23 F"; empty when NaN or less than half a
/// degree
std::string at_least(double kelvin, TemperatureUnit unit);

/// "62 C", "62 C, 112 F": a difference [K], for a place between brackets
std::string degrees_apart_inside(double kelvin, TemperatureUnit unit);

/// " (text)"; empty without one
std::string in_brackets(const std::string& text);

/// "F", "K" or "C"
const char* symbol_of(TemperatureUnit unit) noexcept;

}  // namespace gibbsteel::internal

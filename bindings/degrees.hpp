#pragma once
/// Temperatures in the degrees that were typed: 1000, not 1000.0000000000001.

#include "gibbsteel/units.hpp"

namespace gibbsteel::python {

/// Rounded to nine decimals, when that is the same temperature to the last bit.
inline double as_typed(double degrees, Temperature t, Temperature (*back)(double)) {
  constexpr double kDecimals = 1e9;
  constexpr double kToWhole = 6755399441055744.0;  // 1.5 * 2^52: what is added is whole
  const double rounded = ((degrees * kDecimals + kToWhole) - kToWhole) / kDecimals;
  return back(rounded) == t ? rounded : degrees;
}

inline double celsius_of(Temperature t) {
  return as_typed(t.in_celsius(), t, &Temperature::celsius);
}

inline double fahrenheit_of(Temperature t) {
  return as_typed(t.in_fahrenheit(), t, &Temperature::fahrenheit);
}

}  // namespace gibbsteel::python

#pragma once
/// Numbers as text, independent of the locale.

#include <charconv>
#include <cmath>
#include <string>

namespace gibbsteel::internal {

/// Shortest text that reads back as the same number.
inline std::string shortest(double value) {
  char buffer[32];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value).ptr;
  return {buffer, end};
}

/// With `digits` places behind the point.
inline std::string fixed(double value, int digits) {
  char buffer[400];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value,
                                 std::chars_format::fixed, digits)
                       .ptr;
  return {buffer, end};
}

/// With at most `digits` significant digits: "0.55", "2.75", "1e-09".
inline std::string significant(double value, int digits) {
  char buffer[64];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value,
                                 std::chars_format::general, digits)
                       .ptr;
  return {buffer, end};
}

/// The same as fixed(), or `unknown` for NaN.
inline std::string fixed_or(double value, int digits, const char* unknown) {
  return std::isnan(value) ? unknown : fixed(value, digits);
}

/// Scientific notation with `digits` places behind the point: "1.3e-12".
inline std::string scientific(double value, int digits) {
  char buffer[64];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value,
                                 std::chars_format::scientific, digits)
                       .ptr;
  return {buffer, end};
}

/// Rounded to `digits` significant digits, without exponent from 0.0001 to 1e15:
/// "12300", "0.00212"; or `unknown` for NaN.
inline std::string rounded_or(double value, int digits, const char* unknown) {
  if (std::isnan(value)) return unknown;
  const std::string text = significant(value, digits);
  double number = value;
  std::from_chars(text.data(), text.data() + text.size(), number);
  const double size = std::abs(number);
  if (number != 0.0 && !(size >= 1e-4 && size < 1e15)) return text;
  char buffer[64];
  const auto end =
      std::to_chars(buffer, buffer + sizeof buffer, number, std::chars_format::fixed)
          .ptr;
  return {buffer, end};
}

}  // namespace gibbsteel::internal

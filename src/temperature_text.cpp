#include "internal/temperature_text.hpp"

#include <array>

#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

std::string number(Temperature t, TemperatureUnit unit, int digits = 0) {
  return fixed(in_unit(t, unit), digits);
}

double difference(double kelvin, TemperatureUnit unit) {
  return unit == TemperatureUnit::fahrenheit ? 1.8 * kelvin : kelvin;
}

/// Of a difference of temperatures.
std::string size_text(double kelvin, TemperatureUnit unit) {
  return fixed(difference(kelvin, unit), 0);
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

std::string degrees(const TemperatureRange& range, TemperatureUnit unit) {
  return beside(unit, [&](TemperatureUnit shown) {
    const auto numbers = degree_numbers(std::array{range.low, range.high}, shown);
    return numbers[0] + " to " + numbers[1] + " " + symbol_of(shown);
  });
}

std::vector<std::string> degree_numbers(std::span<const Temperature> series,
                                        TemperatureUnit unit) {
  std::vector<std::string> numbers;
  bool alike = false;
  for (const Temperature t : series) {
    const std::string text = number(t, unit);
    const std::size_t i = numbers.size();
    alike = alike || (i > 0 && text == numbers[i - 1] && t != series[i - 1]);
    numbers.push_back(text);
  }
  for (std::size_t i = 0; alike && i < numbers.size(); ++i)
    numbers[i] = number(series[i], unit, 2);
  return numbers;
}

std::vector<std::string> degree_cells(std::span<const Temperature> series,
                                      TemperatureUnit unit) {
  std::vector<std::string> cells = degree_numbers(series, TemperatureUnit::celsius);
  if (unit == TemperatureUnit::celsius) return cells;
  const auto beside = degree_numbers(series, unit);
  for (std::size_t i = 0; i < cells.size(); ++i)
    cells[i] += " (" + beside[i] + " " + symbol_of(unit) + ")";
  return cells;
}

std::string at_least(double kelvin, TemperatureUnit unit) {
  if (!(kelvin >= 0.5)) return "";
  const std::string text = "at least +-" + fixed(kelvin, 0) + " C";
  if (unit == TemperatureUnit::celsius) return text;
  return text + ", +-" + size_text(kelvin, unit) + " " + symbol_of(unit);
}

std::string degrees_apart_inside(double kelvin, TemperatureUnit unit) {
  const auto one = [&](TemperatureUnit shown) {
    const double size = difference(kelvin, shown);
    return (size < 10.0 ? significant(size, 2) : fixed(size, 0)) + " " +
           symbol_of(shown);
  };
  const std::string celsius = one(TemperatureUnit::celsius);
  return unit == TemperatureUnit::celsius ? celsius : celsius + ", " + one(unit);
}

std::string in_brackets(const std::string& text) {
  return text.empty() ? "" : " (" + text + ")";
}

std::string degrees_with_error(Temperature t, double error, TemperatureUnit unit) {
  return beside(unit, [&](TemperatureUnit shown) {
    return number(t, shown) + " " + symbol_of(shown) + " +-" + size_text(error, shown);
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

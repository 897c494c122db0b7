#pragma once
/// Temperatures as Python sees them: kelvin, celsius and fahrenheit side by side; a
/// range as a pair; nothing as None.

#include <limits>
#include <optional>
#include <string>
#include <utility>

#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/temperature_range.hpp"
#include "gibbsteel/temperature_unit.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {

using Unit = double (Temperature::*)() const;
using Pair = std::pair<double, double>;

/// Degrees as they were typed.
inline double in_unit(Temperature t, Unit unit) {
  if (unit == &Temperature::in_celsius) return celsius_of(t);
  if (unit == &Temperature::in_fahrenheit) return fahrenheit_of(t);
  return (t.*unit)();
}
inline std::optional<double> in_unit(const std::optional<Temperature>& t, Unit unit) {
  return t ? std::optional(in_unit(*t, unit)) : std::nullopt;
}
inline Pair in_unit(const TemperatureRange& range, Unit unit) {
  return {in_unit(range.low, unit), in_unit(range.high, unit)};
}

/// Calls `def` with the name of each unit and how to read it.
template <class Def>
void for_each_unit(Def def) {
  def("kelvin", &Temperature::in_kelvin);
  def("celsius", &Temperature::in_celsius);
  def("fahrenheit", &Temperature::in_fahrenheit);
}

/// Defines `searched_celsius` and the like: the range of a search, from `get`.
template <class Type, class... Options, class Get>
void def_searched(py::class_<Type, Options...>& c, Get get) {
  for_each_unit([&](const std::string& unit_name, Unit unit) {
    c.def_property_readonly(
        ("searched_" + unit_name).c_str(),
        [get, unit](const Type& x) { return in_unit(get(x), unit); },
        "(low, high) of the range that was searched.");
  });
}

/// Defines `temperatures_celsius` and the like from `get`, which gives all answers.
template <class Type, class... Options, class Get>
void def_answers(py::class_<Type, Options...>& c, Get get) {
  for_each_unit([&](const std::string& unit_name, Unit unit) {
    c.def_property_readonly(("temperatures_" + unit_name).c_str(),
                            [get, unit](const Type& x) {
                              py::list all;
                              for (const auto& item : get(x))
                                all.append(in_unit(item.temperature, unit));
                              return py::tuple(all);
                            },
                            "All answers, upwards; empty when there is none.");
  });
}

/// Defines the three properties from `get`, a function of the class.
template <class Type, class... Options, class Get>
void def_temperature(py::class_<Type, Options...>& c, Get get) {
  c.def_property_readonly(
      "kelvin",
      [get](const Type& x) { return in_unit(get(x), &Temperature::in_kelvin); },
      "[K]; a pair for a range, None where there is none.");
  c.def_property_readonly(
      "celsius",
      [get](const Type& x) { return in_unit(get(x), &Temperature::in_celsius); },
      "[C]; a pair for a range, None where there is none.");
  c.def_property_readonly(
      "fahrenheit",
      [get](const Type& x) { return in_unit(get(x), &Temperature::in_fahrenheit); },
      "[F]; a pair for a range, None where there is none.");
}

/// For pickling: kelvin, and back.
inline Pair kelvins(const TemperatureRange& range) {
  return in_unit(range, &Temperature::in_kelvin);
}
inline TemperatureRange range_of(Pair kelvin) {
  return {Temperature::kelvin(kelvin.first), Temperature::kelvin(kelvin.second)};
}
inline std::optional<double> kelvins(const std::optional<Temperature>& t) {
  return in_unit(t, &Temperature::in_kelvin);
}
inline std::optional<Temperature> temperature_of(std::optional<double> kelvin) {
  return kelvin ? std::optional(Temperature::kelvin(*kelvin)) : std::nullopt;
}

/// For pickling.
inline TemperatureUnit unit_at(const py::tuple& fields, std::size_t at) {
  return fields.size() > at ? enumerator(fields[at], TemperatureUnit::kelvin)
                            : TemperatureUnit::celsius;
}

/// The number among the fields of a pickle; NaN in one of a format that had none.
inline double number_at(const py::tuple& fields, std::size_t at) {
  return fields.size() > at ? fields[at].cast<double>()
                            : std::numeric_limits<double>::quiet_NaN();
}

/// A class whose equality is that of its members.
template <class Type, class... Options>
void def_equality(py::class_<Type, Options...>& c) {
  c.def(
      "__eq__", [](const Type& a, const Type& b) { return a == b; }, py::is_operator());
}

}  // namespace gibbsteel::python

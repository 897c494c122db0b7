#pragma once
/// Strong types for quantities whose units are easily confused.

#include <compare>

namespace gibbsteel {

/// An absolute temperature. Made and read only by naming the unit.
class Temperature {
 public:
  static constexpr Temperature kelvin(double value) { return Temperature{value}; }
  static constexpr Temperature celsius(double value) {
    return Temperature{value + kIcePoint};
  }
  static constexpr Temperature fahrenheit(double value) {
    return Temperature{(value - 32.0) / 1.8 + kIcePoint};
  }

  constexpr double in_kelvin() const { return kelvin_; }
  constexpr double in_celsius() const { return kelvin_ - kIcePoint; }
  constexpr double in_fahrenheit() const { return (kelvin_ - kIcePoint) * 1.8 + 32.0; }

  constexpr auto operator<=>(const Temperature&) const = default;

 private:
  static constexpr double kIcePoint = 273.15;  // [K]
  explicit constexpr Temperature(double value) : kelvin_(value) {}
  double kelvin_;
};

/// Molar gas constant [J/(mol K)]: exact product of the 2019 SI constants.
/// Assessments older than 2019 used 8.31451; the difference is below 1e-5 relative.
inline constexpr double kGasConstant = 8.31446261815324;

}  // namespace gibbsteel

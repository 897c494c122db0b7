#pragma once
/// A number that an equation of the trade gives, with its band and where it comes from.

#include <limits>
#include <string>
#include <vector>

namespace gibbsteel {

/// Value and band are NaN when there is no number; `remarks` then says why.
struct Estimate {
  static constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

  std::string name;  ///< "martensite start"
  double value = kUnknown;
  /// About two in three measurements lie between low and high, of hardness more (the
  /// records of tests/reference are counted in README), unless a remark says what else
  /// the band is.
  double low = kUnknown, high = kUnknown;
  std::string unit;      ///< "C", "vol%", "HV", "HRC", "um"
  std::string equation;  ///< key in PropertyEquations, and what was added to it
  std::string source;    ///< citation of the equation
  bool in_range = true;  ///< false: an input lies outside the equation's stated range
  std::vector<std::string> remarks;

  bool known() const noexcept { return value == value; }
  /// "martensite start 205 C (175 to 235)"
  std::string brief() const;
  bool operator==(const Estimate&) const;  ///< two unknown values are equal
};

}  // namespace gibbsteel

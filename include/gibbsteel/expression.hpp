#pragma once
/// A function of temperature as a parameter file states it: plain data.

#include <string>
#include <vector>

namespace gibbsteel {

/// T^exponent, or T ln T when times_log is set (then exponent is 1).
struct TemperaturePower {
  int exponent = 0;
  bool times_log = false;
  bool operator==(const TemperaturePower&) const = default;
};

struct TemperatureTerm {
  TemperaturePower power;
  double coefficient = 0.0;
  double standard_deviation = 0.0;  ///< of the coefficient; 0 where none is stated
  bool operator==(const TemperatureTerm&) const = default;
};

/// `factor` times the named curve.
struct CurveShare {
  std::string curve;
  double factor = 0.0;
  bool operator==(const CurveShare&) const = default;
};

/// Sum of powers of T and of named curves; empty means 0.                      Eq. (P1)
struct Expression {
  std::vector<TemperatureTerm> terms;
  std::vector<CurveShare> curves;
  bool operator==(const Expression&) const = default;
};

}  // namespace gibbsteel

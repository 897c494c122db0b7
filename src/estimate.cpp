#include "gibbsteel/estimate.hpp"

#include "internal/number_format.hpp"

namespace gibbsteel {
namespace {

bool same(double a, double b) { return a == b || (a != a && b != b); }

/// Digits behind the point that the band supports.
int digits_of(const std::string& unit) {
  return unit == "HRC" || unit == "vol%" || unit == "um" ? 1 : 0;
}

}  // namespace

std::string Estimate::brief() const {
  if (!known()) return name + " not known";
  const int digits = digits_of(unit);
  return name + " " + internal::fixed(value, digits) + " " + unit + " (" +
         internal::fixed(low, digits) + " to " + internal::fixed(high, digits) + ")";
}

bool Estimate::operator==(const Estimate& other) const {
  return name == other.name && same(value, other.value) && same(low, other.low) &&
         same(high, other.high) && unit == other.unit && equation == other.equation &&
         source == other.source && in_range == other.in_range &&
         remarks == other.remarks;
}

}  // namespace gibbsteel

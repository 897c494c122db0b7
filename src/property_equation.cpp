#include "gibbsteel/property_equation.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "internal/number_format.hpp"

namespace gibbsteel {
namespace {

constexpr double kNoticed = 0.5;  ///< [wt%] of an element without a term

/// Central difference of `f` at `x`; the step is small against what the equations
/// resolve and large against rounding.
template <typename Function>
double difference(double x, const Function& f) {
  const double step = 1e-5 * std::max(1.0, std::abs(x));
  return (f(x + step) - f(x - step)) / (2.0 * step);
}

PropertySlope differences(const PropertyEquation::Value& value,
                          const PropertyInput& input) {
  PropertySlope slope;
  for (const auto& [symbol, percent] : input.weight_percent) {
    PropertyInput moved = input;
    slope.weight_percent.set(
        symbol, difference(percent, [&, s = std::string_view(symbol)](double x) {
          moved.weight_percent.set(s, x);
          return value(moved);
        }));
  }
  const auto with_respect_to = [&](double PropertyInput::*member) {
    PropertyInput moved = input;
    return difference(input.*member, [&](double x) {
      moved.*member = x;
      return value(moved);
    });
  };
  if (!std::isnan(input.martensite_start))
    slope.martensite_start = with_respect_to(&PropertyInput::martensite_start);
  if (input.carbide_fraction > 0.0)
    slope.carbide_fraction = with_respect_to(&PropertyInput::carbide_fraction);
  return slope;
}

bool is_inside(double percent, const EquationRange& range) {
  return percent >= range.low && percent <= range.high;
}

/// With two digits behind the point, or as many as show that it is outside.
std::string outside_text(double percent, const EquationRange& range) {
  for (int digits = 2; digits < 9; ++digits) {
    const std::string text = internal::fixed(percent, digits);
    double shown = percent;
    std::from_chars(text.data(), text.data() + text.size(), shown);
    if (!is_inside(shown, range)) return text;
  }
  return internal::shortest(percent);
}

}  // namespace

std::string_view property_kind_name(PropertyKind kind) {
  switch (kind) {
    case PropertyKind::martensite_start:
      return "martensite start";
    case PropertyKind::retained_austenite:
      return "retained austenite";
    case PropertyKind::martensite_hardness:
      return "martensite hardness";
    case PropertyKind::grain_pinning:
      break;
  }
  return "grain pinning";
}

std::string_view property_unit(PropertyKind kind) {
  switch (kind) {
    case PropertyKind::martensite_start:
      return "C";
    case PropertyKind::retained_austenite:
      return "";
    case PropertyKind::martensite_hardness:
      return "HV";
    case PropertyKind::grain_pinning:
      break;
  }
  return "um";
}

PropertySlope PropertyEquation::slope_at(const PropertyInput& input) const {
  return slope ? slope(input) : differences(value, input);
}

std::vector<std::string> PropertyEquation::range_remarks(
    const NamedValues& weight_percent) const {
  std::vector<std::string> remarks;
  for (const EquationRange& range : ranges) {
    const double percent = weight_percent[range.element];
    if (!is_inside(percent, range))
      remarks.push_back(key + ": " + outside_text(percent, range) + " wt% " +
                        range.element + " is outside its range, " +
                        internal::shortest(range.low) + " to " +
                        internal::shortest(range.high));
  }
  return remarks;
}

std::vector<std::string> PropertyEquation::term_remarks(
    const NamedValues& weight_percent) const {
  std::vector<std::string> remarks;
  if (elements.empty()) return remarks;
  for (const auto& [symbol, percent] : weight_percent)
    if (symbol != "Fe" && percent > kNoticed &&
        std::find(elements.begin(), elements.end(), symbol) == elements.end())
      remarks.push_back(key + ": no term for " + symbol + ", " +
                        internal::fixed(percent, 2) + " wt%");
  return remarks;
}

std::string PropertyEquation::brief() const {
  const std::string unit(property_unit(kind));
  return std::string(property_kind_name(kind)) + ", " + key +
         (label.empty() ? "" : " (" + label + ")") +
         (unit.empty() ? "" : " [" + unit + "]") + ": " + formula;
}

}  // namespace gibbsteel

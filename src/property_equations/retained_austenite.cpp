/// Retained austenite as a fraction of the austenite: Eq. (H13) to (H15).

#include <cmath>

#include "internal/number_format.hpp"
#include "property_equations/builtin.hpp"
#include "property_equations/start_forms.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kPublishedRate = 0.011;  ///< [1/C]

PropertyEquation austenite(const char* key, const char* label, const char* source) {
  PropertyEquation equation;
  equation.kind = PropertyKind::retained_austenite;
  equation.key = key;
  equation.label = label;
  equation.source = source;
  return equation;
}

/// exp(-rate below) for the distance below the start; everything above it stays.
double fraction(double rate, double below) {
  if (std::isnan(rate) || std::isnan(below)) return PropertyInput::kUnknown;
  return rate <= 0.0 || below <= 0.0 ? 1.0 : std::exp(-rate * below);
}

/// A rate and a start of its own, both functions of composition.
struct OwnStart {
  double (*rate)(const NamedValues&);
  NamedValues (*rate_slope)(const NamedValues&);
  double (*start)(const NamedValues&);
  NamedValues (*start_slope)(const NamedValues&);

  double below(const PropertyInput& in) const {
    return start(in.weight_percent) - in.coldest_celsius;
  }
  double value(const PropertyInput& in) const {
    return fraction(rate(in.weight_percent), below(in));
  }
  PropertySlope slope(const PropertyInput& in) const {
    PropertySlope result;
    const double f = value(in);
    if (!(f < 1.0)) return result;
    const double a = rate(in.weight_percent);
    for (const auto& [symbol, factor] : rate_slope(in.weight_percent))
      result.weight_percent.set(symbol, -f * factor * below(in));
    for (const auto& [symbol, factor] : start_slope(in.weight_percent))
      result.weight_percent.set(symbol, result.weight_percent[symbol] - f * a * factor);
    return result;
  }
};

void use(PropertyEquation& equation, const OwnStart& own) {
  equation.value = [own](const PropertyInput& in) { return own.value(in); };
  equation.slope = [own](const PropertyInput& in) { return own.slope(in); };
}

LinearStart dilatometer_start() {
  return {462.0,
          {{"C", -273.0}, {"Mn", -26.0}, {"Ni", -16.0}, {"Cr", -13.0}, {"Mo", -30.0}}};
}

LinearStart dilatometer_rate() {
  return {0.0224,
          {{"C", -0.0107},
           {"Mn", -0.0007},
           {"Ni", -0.00005},
           {"Cr", -0.00012},
           {"Mo", -0.0001}}};
}

/// 1000 times the rate of Eq. (H15).
ExponentialStart carbon_rate() {
  return {
      19.8,
      1.56,
      {27.2,
       {{"Mn", -0.14}, {"Si", -0.21}, {"Cr", -0.11}, {"Ni", -0.08}, {"Mo", -0.05}}}};
}

PropertyEquation van_bohemen_sietsma() {
  PropertyEquation equation =
      austenite("van-bohemen-sietsma", "H14",
                "van Bohemen & Sietsma, Metall. Mater. Trans. A 40 (2009) 1059, from "
                "memory");
  equation.formula = "exp(-a (T - T_coldest)), a = " + dilatometer_rate().formula() +
                     ", T = " + dilatometer_start().formula();
  equation.elements = {"C", "Mn", "Ni", "Cr", "Mo"};
  equation.error = 0.08;
  equation.note =
      "fast dilatometer quenches; reads low by a factor 2 to 3 for tool "
      "steels; does not use the martensite start that was chosen";
  use(equation, {[](const NamedValues& wt) { return dilatometer_rate()(wt); },
                 [](const NamedValues&) { return dilatometer_rate().per_percent; },
                 [](const NamedValues& wt) { return dilatometer_start()(wt); },
                 [](const NamedValues&) { return dilatometer_start().per_percent; }});
  return equation;
}

NamedValues carbon_rate_slope(const NamedValues& wt) {
  NamedValues slope;
  for (const auto& [symbol, factor] : carbon_rate().slope(wt))
    slope.set(symbol, 1e-3 * factor);
  return slope;
}

PropertyEquation van_bohemen_rate() {
  PropertyEquation equation =
      austenite("van-bohemen-rate", "H15",
                "van Bohemen, Mater. Sci. Technol. 28 (2012) 487, rate from memory");
  equation.formula = "exp(-a (Ms - T_coldest)), 1000 a = " + carbon_rate().formula() +
                     ", Ms of van-bohemen (H7)";
  equation.elements = {"C", "Mn", "Si", "Cr", "Ni", "Mo"};
  equation.ranges = {{"C", 0.1, 1.9}};
  equation.error = 0.08;
  equation.note =
      "fast dilatometer quenches; reads low by a factor 2 to 3 for tool "
      "steels; does not use the martensite start that was chosen";
  use(equation,
      {[](const NamedValues& wt) { return 1e-3 * carbon_rate()(wt); },
       &carbon_rate_slope, [](const NamedValues& wt) { return van_bohemen()(wt); },
       [](const NamedValues& wt) { return van_bohemen().slope(wt); }});
  return equation;
}

}  // namespace

PropertyEquation koistinen_marburger(double rate) {
  PropertyEquation equation = austenite(
      "koistinen-marburger", "H13", "Koistinen & Marburger, Acta Metall. 7 (1959) 59");
  if (rate != kPublishedRate) {
    equation.key += ", rate " + significant(rate, 3);
    equation.source += "; rate: own estimate";
  }
  equation.formula = "exp(-" + significant(rate, 3) + " (Ms - T_coldest))";
  equation.ranges = {{"C", 0.37, 1.1}};
  equation.error = 0.05;
  equation.note = "error holds for less than 0.25; own estimate";
  equation.value = [rate](const PropertyInput& in) {
    return fraction(rate, in.martensite_start - in.coldest_celsius);
  };
  equation.slope = [rate](const PropertyInput& in) {
    const double f = fraction(rate, in.martensite_start - in.coldest_celsius);
    return PropertySlope{{}, f < 1.0 ? -rate * f : 0.0, 0.0};
  };
  return equation;
}

std::vector<PropertyEquation> retained_austenite_equations() {
  return {koistinen_marburger(kPublishedRate), van_bohemen_sietsma(),
          van_bohemen_rate()};
}

}  // namespace gibbsteel::internal

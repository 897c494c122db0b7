/// Hardness of martensite without retained austenite or carbide [HV]: Eq. (H16) to
/// (H19). Those that were published in HRC are turned into HV by Eq. (H21).

#include <algorithm>
#include <cmath>

#include "internal/rockwell_scale.hpp"
#include "property_equations/builtin.hpp"

namespace gibbsteel::internal {
namespace {

/// d(HV) / d(HRC).
double hv_per_hrc(double hrc) { return 1.0 / rockwell_slope(vickers_of(hrc)); }

PropertyEquation hardness(const char* key, const char* label, const char* source,
                          std::vector<EquationRange> ranges, double error,
                          const char* note) {
  PropertyEquation equation;
  equation.kind = PropertyKind::martensite_hardness;
  equation.key = key;
  equation.label = label;
  equation.source = source;
  equation.ranges = std::move(ranges);
  equation.error = error;
  equation.note = note;
  return equation;
}

/// A function of carbon alone and its derivative, held constant above a bound.
struct CarbonHardness {
  double bound;  ///< [wt%]
  double (*value)(double carbon);
  double (*slope)(double carbon);
};

void use(PropertyEquation& equation, const CarbonHardness& form) {
  equation.value = [form](const PropertyInput& in) {
    return form.value(std::min(in.weight_percent["C"], form.bound));
  };
  equation.slope = [form](const PropertyInput& in) {
    const double carbon = in.weight_percent["C"];
    return PropertySlope{
        {{"C", carbon < form.bound ? form.slope(carbon) : 0.0}}, 0.0, 0.0};
  };
}

double hodge_orehoski_hrc(double c) {
  return 33.087 +
         c * (50.723 + c * (33.662 + c * (-2.7048 + c * (-107.02 + c * 43.523))));
}

double hodge_orehoski_slope(double c) {
  const double per_percent =
      50.723 + c * (67.324 + c * (-8.1144 + c * (-428.08 + c * 217.615)));
  return hv_per_hrc(hodge_orehoski_hrc(c)) * per_percent;
}

PropertyEquation hodge_orehoski() {
  PropertyEquation equation = hardness(
      "hodge-orehoski", "H16",
      "Hodge & Orehoski, Trans. AIME 167 (1946) 627, as in ASTM A255 for 99.9 % "
      "martensite, from memory",
      {{"C", 0.1, 0.7}}, 30.0, "published in HRC; held at its value for 0.7 % C above");
  equation.formula =
      "HRC 33.087 + 50.723 C + 33.662 C^2 - 2.7048 C^3 - 107.02 C^4 + 43.523 C^5";
  use(equation, {0.7, [](double c) { return vickers_of(hodge_orehoski_hrc(c)); },
                 &hodge_orehoski_slope});
  return equation;
}

PropertyEquation just() {
  PropertyEquation equation = hardness(
      "just", "H17", "Just, Haerterei-Tech. Mitt. 23 (1968) 85, from memory",
      {{"C", 0.0, 0.6}}, 50.0,
      "published in HRC; 2 HRC high at 0.6 % C; held at its value there above");
  equation.formula = "HRC 20 + 60 sqrt(C)";
  use(equation,
      {0.6,
       [](double c) { return vickers_of(20.0 + 60.0 * std::sqrt(std::max(c, 0.0))); },
       [](double c) {
         if (c <= 0.0) return 0.0;
         const double root = std::sqrt(c);
         return hv_per_hrc(20.0 + 60.0 * root) * 30.0 / root;
       }});
  return equation;
}

PropertyEquation carbon_quadratic() {
  PropertyEquation equation = hardness(
      "carbon-quadratic", "H18",
      "fit to data of Krauss and Leslie used by Takahashi & Bhadeshia, from memory",
      {{"C", 0.0, 0.9}}, 40.0,
      "held at its value for 0.9 % C above; error: own estimate from the difference to "
      "hodge-orehoski (H16)");
  equation.formula = "HV 150 + 1667 C - 926 C^2";
  use(equation, {0.9, [](double c) { return 150.0 + c * (1667.0 - 926.0 * c); },
                 [](double c) { return 1667.0 - 1852.0 * c; }});
  return equation;
}

PropertyEquation maynier() {
  PropertyEquation equation = hardness(
      "maynier", "H19",
      "Maynier, Dollet & Bastien, Hardenability Concepts, AIME (1978), from "
      "memory",
      {{"C", 0.1, 0.5}}, 40.0,
      "low-alloy steels; needs the cooling rate at 700 C; error: own estimate");
  equation.formula =
      "HV 127 + 949 C + 27 Si + 11 Mn + 8 Ni + 16 Cr + 21 log10(cooling rate in C/h)";
  const NamedValues factors{
      {"C", 949.0}, {"Si", 27.0}, {"Mn", 11.0}, {"Ni", 8.0}, {"Cr", 16.0}};
  for (const auto& entry : factors) equation.elements.push_back(entry.first);
  equation.value = [factors](const PropertyInput& in) {
    double hv = 127.0 + 21.0 * std::log10(in.cooling_rate);
    for (const auto& [symbol, factor] : factors)
      hv += factor * in.weight_percent[symbol];
    return hv;
  };
  equation.slope = [factors](const PropertyInput&) {
    return PropertySlope{factors, 0.0, 0.0};
  };
  return equation;
}

}  // namespace

std::vector<PropertyEquation> martensite_hardness_equations() {
  return {hodge_orehoski(), just(), carbon_quadratic(), maynier()};
}

}  // namespace gibbsteel::internal

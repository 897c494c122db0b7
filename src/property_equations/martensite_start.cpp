/// Martensite start [C] from weight percents in the austenite: Eq. (H1) to (H12).

#include "property_equations/builtin.hpp"
#include "property_equations/start_forms.hpp"

namespace gibbsteel::internal {
namespace {

double product_terms(const NamedValues& wt) {
  return 217.0 * wt["C"] * wt["C"] - 71.5 * wt["C"] * wt["Mn"] -
         67.6 * wt["C"] * wt["Cr"];
}

NamedValues andrews_product_slope(const LinearStart& linear, const NamedValues& wt) {
  NamedValues slope = linear.per_percent;
  slope.set("C", slope["C"] + 434.0 * wt["C"] - 71.5 * wt["Mn"] - 67.6 * wt["Cr"]);
  slope.set("Mn", -71.5 * wt["C"]);
  slope.set("Cr", slope["Cr"] - 67.6 * wt["C"]);
  return slope;
}

PropertyEquation start(const char* key, const char* label, const char* source,
                       std::vector<EquationRange> ranges, double error,
                       const char* note) {
  PropertyEquation equation;
  equation.kind = PropertyKind::martensite_start;
  equation.key = key;
  equation.label = label;
  equation.source = source;
  equation.ranges = std::move(ranges);
  equation.error = error;
  equation.note = note;
  return equation;
}

void use(PropertyEquation& equation, const LinearStart& linear) {
  equation.formula = linear.formula();
  for (const auto& entry : linear.per_percent) equation.elements.push_back(entry.first);
  equation.value = [linear](const PropertyInput& in) {
    return linear(in.weight_percent);
  };
  equation.slope = [linear](const PropertyInput&) {
    return PropertySlope{linear.per_percent, 0.0, 0.0};
  };
}

void use(PropertyEquation& equation, const ExponentialStart& form) {
  equation.formula = form.formula();
  for (const auto& entry : form.slope({})) equation.elements.push_back(entry.first);
  equation.value = [form](const PropertyInput& in) { return form(in.weight_percent); };
  equation.slope = [form](const PropertyInput& in) {
    return PropertySlope{form.slope(in.weight_percent), 0.0, 0.0};
  };
}

void use_andrews_product(PropertyEquation& equation) {
  const LinearStart linear = andrews_product();
  equation.formula = linear.formula() + " + 217 C^2 - 71.5 C Mn - 67.6 C Cr";
  equation.elements = {"C", "Ni", "Cr", "Mo", "Mn"};
  equation.value = [linear](const PropertyInput& in) {
    return linear(in.weight_percent) + product_terms(in.weight_percent);
  };
  equation.slope = [linear](const PropertyInput& in) {
    return PropertySlope{andrews_product_slope(linear, in.weight_percent), 0.0, 0.0};
  };
}

void use_payson_savage(PropertyEquation& equation) {
  const LinearStart fahrenheit = payson_savage();
  use(equation, fahrenheit);
  equation.formula = "(" + equation.formula + " - 32) / 1.8";
  equation.value = [fahrenheit](const PropertyInput& in) {
    return (fahrenheit(in.weight_percent) - 32.0) / 1.8;
  };
  equation.slope = [fahrenheit](const PropertyInput&) {
    PropertySlope slope;
    for (const auto& [symbol, factor] : fahrenheit.per_percent)
      slope.weight_percent.set(symbol, factor / 1.8);
    return slope;
  };
}

void use_mean(PropertyEquation& equation) {
  const ExponentialStart one = van_bohemen();
  const ExponentialStart other = barbier();
  equation.formula = "mean of van-bohemen (H7) and barbier (H8)";
  for (const auto& entry : other.slope({})) equation.elements.push_back(entry.first);
  equation.value = [one, other](const PropertyInput& in) {
    return 0.5 * (one(in.weight_percent) + other(in.weight_percent));
  };
  equation.slope = [one, other](const PropertyInput& in) {
    const NamedValues first = one.slope(in.weight_percent);
    PropertySlope slope;
    for (const auto& [symbol, factor] : other.slope(in.weight_percent))
      slope.weight_percent.set(symbol, 0.5 * (first[symbol] + factor));
    return slope;
  };
}

/// The same with the terms of Kung & Rayment.
PropertyEquation with_cobalt_and_silicon(PropertyEquation base) {
  base.key += "-co-si";
  base.label = "H4";
  const LinearStart added = cobalt_silicon();
  base.formula += added.terms();
  base.source += "; Co and Si: Kung & Rayment, Metall. Trans. A 13 (1982) 328";
  base.note =
      "terms for steels rich in Si or Co; error that of the equation without "
      "them";
  base.elements.insert(base.elements.end(), {"Co", "Si"});
  base.value = [value = base.value, added](const PropertyInput& in) {
    return value(in) + added(in.weight_percent);
  };
  base.slope = [slope = base.slope, added](const PropertyInput& in) {
    PropertySlope result = slope(in);
    for (const auto& [symbol, factor] : added.per_percent)
      result.weight_percent.set(symbol, factor);
    return result;
  };
  return base;
}

std::vector<EquationRange> andrews_range() {
  return {{"C", 0.0, 0.6},
          {"Cr", 0.0, 5.0},
          {"Ni", 0.0, 5.0},
          {"Mn", 0.0, 5.0},
          {"Mo", 0.0, 5.4}};
}

// Errors: root mean square over 76 steels of a published table of measured martensite
// start (Wentzien et al., steel research int. (2024) 2400210), computed for this
// library with the bulk composition: undissolved carbide inflates them all.

std::vector<PropertyEquation> linear_equations() {
  PropertyEquation one = start("steven-haynes", "H1",
                               "Steven & Haynes, J. Iron Steel Inst. 183 (1956) 349",
                               {{"C", 0.1, 0.55},
                                {"Mn", 0.2, 1.7},
                                {"Cr", 0.0, 3.5},
                                {"Ni", 0.0, 5.0},
                                {"Mo", 0.0, 1.0}},
                               67.0, "reads 30 to 70 C low above 0.6 % carbon");
  use(one, steven_haynes());
  PropertyEquation two =
      start("andrews-linear", "H2", "Andrews, J. Iron Steel Inst. 203 (1965) 721",
            andrews_range(), 42.0, "reads 40 C low above 0.6 % carbon");
  use(two, andrews_linear());
  PropertyEquation three =
      start("andrews-product", "H3", "Andrews, J. Iron Steel Inst. 203 (1965) 721",
            andrews_range(), 85.0, "not to be extrapolated in chromium");
  use_andrews_product(three);
  return {one,
          two,
          three,
          with_cobalt_and_silicon(one),
          with_cobalt_and_silicon(two),
          with_cobalt_and_silicon(three)};
}

std::vector<PropertyEquation> wide_equations() {
  PropertyEquation five = start(
      "stuhlmann", "H5", "Stuhlmann, Haerterei-Tech. Mitt. 6 (1954) 31, from memory",
      {}, 55.0, "low and medium alloy steels, elements in solution");
  use(five, stuhlmann());
  PropertyEquation six = start(
      "capdevila", "H6",
      "Capdevila, Caballero & Garcia de Andres, ISIJ Int. 42 (2002) 894; W and Cu "
      "terms from memory",
      {{"C", 0.0, 0.9}, {"Cr", 0.0, 17.0}}, 29.0, "wide range of steels");
  use(six, capdevila());
  return {five, six};
}

std::vector<PropertyEquation> exponential_equations() {
  PropertyEquation seven =
      start("van-bohemen", "H7", "van Bohemen, Mater. Sci. Technol. 28 (2012) 487",
            {{"C", 0.1, 1.9}}, 25.0, "low and medium alloy steels");
  use(seven, van_bohemen());
  PropertyEquation eight =
      start("barbier", "H8", "Barbier, Adv. Eng. Mater. 16 (2014) 122, from memory",
            {{"C", 0.0, 2.0}, {"Cr", 0.0, 17.0}}, 26.0,
            "the V term is for vanadium in solution");
  use(eight, barbier());
  PropertyEquation nine = start(
      "ingber-kunert", "H9", "Ingber & Kunert, steel research int. 93 (2022) 2100576",
      {{"C", 0.0, 2.0}}, 69.0, "high-carbon low-alloy steels only");
  use(nine, ingber_kunert());
  return {seven, eight, nine};
}

std::vector<PropertyEquation> other_equations() {
  PropertyEquation ten =
      start("finkler-schirra", "H10",
            "Finkler & Schirra, steel research 67 (1996) 328, from memory",
            {{"C", 0.0, 0.25}, {"Cr", 8.0, 14.0}}, 38.0, "8 to 14 % Cr steels");
  use(ten, finkler_schirra());
  PropertyEquation eleven =
      start("payson-savage", "H11", "Payson & Savage, Trans. ASM 33 (1944) 261", {},
            70.0, "historical; its error was not looked into, own estimate");
  use_payson_savage(eleven);
  PropertyEquation mean =
      start("exponential-mean", "H12",
            "mean of van Bohemen 2012 and Barbier 2014 (from memory), own choice",
            {{"C", 0.3, 0.8}, {"Cr", 0.0, 13.0}}, 30.0,
            "range and error: own estimate from 76 published steels");
  use_mean(mean);
  return {ten, eleven, mean};
}

}  // namespace

std::vector<PropertyEquation> martensite_start_equations() {
  std::vector<PropertyEquation> all = linear_equations();
  for (auto* part : {&wide_equations, &exponential_equations, &other_equations})
    for (PropertyEquation& equation : part()) all.push_back(std::move(equation));
  return all;
}

}  // namespace gibbsteel::internal

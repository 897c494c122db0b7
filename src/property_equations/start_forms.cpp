#include "property_equations/start_forms.hpp"

#include <cmath>

#include "internal/number_format.hpp"

namespace gibbsteel::internal {

double LinearStart::operator()(const NamedValues& wt) const {
  double sum = constant;
  for (const auto& [symbol, factor] : per_percent) sum += factor * wt[symbol];
  return sum;
}

std::string LinearStart::terms() const {
  std::string text;
  for (const auto& [symbol, factor] : per_percent)
    text += (factor < 0.0 ? " - " : " + ") + significant(std::abs(factor), 5) + " " +
            symbol;
  return text;
}

std::string LinearStart::formula() const { return significant(constant, 5) + terms(); }

double ExponentialStart::operator()(const NamedValues& wt) const {
  return linear(wt) - depth * (1.0 - std::exp(-rate * wt["C"]));
}

NamedValues ExponentialStart::slope(const NamedValues& wt) const {
  NamedValues result = linear.per_percent;
  result.set("C", result["C"] - depth * rate * std::exp(-rate * wt["C"]));
  return result;
}

std::string ExponentialStart::formula() const {
  return significant(linear.constant, 5) + " - " + significant(depth, 5) +
         " (1 - exp(-" + significant(rate, 5) + " C))" + linear.terms();
}

LinearStart steven_haynes() {
  return {561.0,
          {{"C", -474.0}, {"Mn", -33.0}, {"Cr", -17.0}, {"Ni", -17.0}, {"Mo", -21.0}}};
}

LinearStart andrews_linear() {
  return {539.0,
          {{"C", -423.0}, {"Mn", -30.4}, {"Ni", -17.7}, {"Cr", -12.1}, {"Mo", -7.5}}};
}

LinearStart andrews_product() {
  return {512.0, {{"C", -453.0}, {"Ni", -16.9}, {"Cr", 15.0}, {"Mo", -9.5}}};
}

LinearStart cobalt_silicon() { return {0.0, {{"Co", 10.0}, {"Si", -7.5}}}; }

LinearStart stuhlmann() {
  return {550.0,
          {{"C", -350.0},
           {"Mn", -40.0},
           {"Cr", -20.0},
           {"Mo", -10.0},
           {"Ni", -17.0},
           {"W", -8.0},
           {"V", -35.0},
           {"Cu", -10.0},
           {"Co", 15.0},
           {"Al", 30.0}}};
}

LinearStart capdevila() {
  return {491.05,
          {{"C", -302.6},
           {"Mn", -30.6},
           {"Ni", -16.6},
           {"Cr", -8.9},
           {"Mo", 2.4},
           {"Cu", -11.3},
           {"Co", 8.58},
           {"W", 7.4},
           {"Si", -14.5}}};
}

ExponentialStart barbier() {
  return {601.2,
          0.868,
          {545.0,
           {{"Mn", -34.4},
            {"Si", -13.7},
            {"Cr", -9.2},
            {"Ni", -17.3},
            {"Mo", -15.4},
            {"V", 10.8},
            {"Co", 4.7},
            {"Al", -1.4},
            {"Cu", -16.3},
            {"Nb", -361.0},
            {"Ti", -2.44},
            {"B", -3448.0}}}};
}

ExponentialStart ingber_kunert() {
  return {75.0,
          0.96,
          {530.2,
           {{"C", -290.3},
            {"Mn", -35.5},
            {"Si", -6.8},
            {"Cr", -20.8},
            {"Ni", -17.2},
            {"Mo", -10.4},
            {"Al", 7.1},
            {"Co", 4.8}}}};
}

// 635 - 474 [C + 0.86 (N - 0.15 (Nb + Zr)) - 0.066 (Ta + Hf)] - ..., multiplied out.
LinearStart finkler_schirra() {
  return {635.0,
          {{"C", -474.0},
           {"N", -474.0 * 0.86},
           {"Nb", 474.0 * 0.86 * 0.15},
           {"Zr", 474.0 * 0.86 * 0.15},
           {"Ta", 474.0 * 0.066},
           {"Hf", 474.0 * 0.066},
           {"Mn", -33.0},
           {"Cr", -17.0},
           {"Ni", -17.0},
           {"Mo", -21.0},
           {"V", -39.0},
           {"W", -11.0}}};
}

LinearStart payson_savage() {
  return {930.0,
          {{"C", -570.0},
           {"Mn", -60.0},
           {"Si", -20.0},
           {"Cr", -50.0},
           {"Ni", -30.0},
           {"Mo", -20.0}}};
}

const ExponentialStart& van_bohemen() {
  static const ExponentialStart form{
      600.0,
      0.96,
      {565.0,
       {{"Mn", -31.0}, {"Si", -13.0}, {"Cr", -10.0}, {"Ni", -18.0}, {"Mo", -12.0}}}};
  return form;
}

}  // namespace gibbsteel::internal

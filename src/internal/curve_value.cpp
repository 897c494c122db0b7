#include "internal/curve_value.hpp"

namespace gibbsteel::internal {

double curve_value(const ParameterSet& set, std::string_view curve, double kelvin) {
  return expression_value(set, {{}, {{std::string(curve), 1.0}}}, kelvin);
}

double expression_value(const ParameterSet& set, const Expression& expression,
                        double kelvin) {
  const auto compiled = compile_expression(set, expression);
  const CurveTable table(set);
  std::vector<TemperatureValue> values(table.size());
  table.evaluate(kelvin, values);
  return compiled.at(kelvin, values).value;
}

}  // namespace gibbsteel::internal

#include "gibbsteel/curve_value.hpp"

#include "gibbsteel/errors.hpp"
#include "internal/temperature_functions.hpp"

namespace gibbsteel {

double curve_value(const ParameterSet& set, std::string_view curve, Temperature t) {
  if (!set.find_curve(curve))
    throw InputError({{"gibbsteel.input.213", "curve",
                       "there is no curve '" + std::string(curve) + "'",
                       "see the curves of the parameter set"}});
  const auto compiled =
      internal::compile_expression(set, {{}, {{std::string(curve), 1.0}}});
  const internal::CurveTable table(set);
  std::vector<internal::TemperatureValue> values(table.size());
  const internal::TemperaturePowers powers(t.in_kelvin());
  table.evaluate(powers, values);
  return compiled.at(powers, values).value;
}

}  // namespace gibbsteel

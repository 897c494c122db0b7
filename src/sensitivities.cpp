#include "gibbsteel/sensitivities.hpp"

#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/slopes_of_soak.hpp"
#include "parameter_file/parameter_numbers.hpp"

namespace gibbsteel {

std::vector<Input> parameter_inputs(const ParameterSet& set) {
  std::vector<Input> inputs;
  for (const auto& number : parameter_file::parameter_numbers(set))
    inputs.push_back({Input::Kind::parameter, number.place, number.unit});
  return inputs;
}

const StateSlope& Sensitivities::at(std::string_view name) const {
  std::string known;
  for (const StateSlope& slope : slopes) {
    if (slope.input.name == name) return slope;
    if (slope.input.kind != Input::Kind::parameter)
      known += (known.empty() ? "" : ", ") + slope.input.name;
  }
  std::string remedy = known.empty() ? "the state is not usable and has no slopes"
                                     : "choose from: " + known +
                                           ", and the places of parameters asked for";
  const std::string symbol(name);
  const bool none = name != "Fe" && find_element(name) &&
                    state.analysis.modelled[name] == 0.0 &&
                    state.analysis.not_modelled[name] == 0.0;
  if (none && state.usable())
    remedy = internal::first_addition(symbol) + ", or " + remedy;
  throw InputError({{"gibbsteel.input.209", "sensitivities",
                     none ? "the calculation holds no " + symbol
                          : "there is no input '" + symbol + "'",
                     remedy}});
}

std::string internal::first_addition(const std::string& symbol) {
  return "compare() the steel with one that has some, changed(" + symbol + "=1)";
}

std::string Sensitivities::brief() const {
  return "Sensitivities of " + state.brief() + ", to " + std::to_string(slopes.size()) +
         " inputs";
}

Sensitivities sensitivities(const Steel& steel, Temperature t,
                            const SoakOptions& options,
                            const SensitivityOptions& chosen) {
  internal::check_temperatures({&t, 1}, options.temperature_unit);
  const internal::SoakProblem problem(steel, options);
  internal::check_inputs(problem, chosen);
  const Equilibrium result = problem.solve(t);
  Sensitivities all;
  all.state = problem.state_of(result);
  all.slopes = internal::slopes_of_soak(problem, result, all.state, chosen);
  return all;
}

}  // namespace gibbsteel

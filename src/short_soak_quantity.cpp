/// The matrix by the short-soak limit as a quantity; see short_soak_limit.hpp.

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/short_soak_limit.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_checks.hpp"

namespace gibbsteel::quantities {
namespace {

/// True when the state has no such limit; other errors are about the options.
bool has_none(const InputError& error) {
  const auto& problems = error.problems();
  return std::all_of(problems.begin(), problems.end(), [](const Problem& problem) {
    return problem.code == codes::kNoShortSoakLimit ||
           problem.code == "gibbsteel.input.260";
  });
}

double value_at(const State& state, const std::string& element,
                const ShortSoakLimitOptions& options) {
  if (state.solve_report.status == SolveStatus::short_soak_limit)
    return state.matrix.weight_percent[element];
  try {
    return short_soak_limit(state, options).state.matrix.weight_percent[element];
  } catch (const InputError& error) {
    if (!has_none(error)) throw;
    return Occurrence::kUnknown;
  }
}

/// The long hold at a temperature, or with an amount of an element, a step away.
State beside(const State& state, const Input& input, double step,
             const ShortSoakLimitOptions& options) {
  NamedValues given = state.analysis.given;
  const bool heated = input.kind == Input::Kind::temperature;
  if (!heated) {
    given.set(input.name, given[input.name] + step);
    if (given.contains("Fe")) given.set("Fe", given["Fe"] - step);
  }
  const SharedParameters parameters =
      options.parameters ? options.parameters : default_parameters();
  const Steel steel(given, {state.steel, parameters, !state.analysis.bound.empty()});
  SoakOptions soak;
  soak.suppressed = state.suppressed;
  const double kelvin = state.temperature.in_kelvin() + (heated ? step : 0.0);
  return steel.soak(Temperature::kelvin(kelvin), soak);
}

/// Central difference; there is none to numbers of the parameter file.
double slope_at(const State& state, const Input& input, const std::string& element,
                const ShortSoakLimitOptions& options) {
  if (input.kind == Input::Kind::parameter || state.solve_report.by_mass_balance())
    return Occurrence::kUnknown;
  const double step = input.kind == Input::Kind::temperature ? 0.5 : 0.001;
  const auto value = [&](double by) {
    return value_at(beside(state, input, by, options), element, options);
  };
  return (value(step) - value(-step)) / (2.0 * step);
}

/// How to make it again; nothing for options that cannot be written down.
Quantity::Origin origin_of(const std::string& element,
                           const ShortSoakLimitOptions& options) {
  if (options.parameters) return {};
  Quantity::Origin origin{"short_soak_matrix", {element}};
  if (options.annealed_at)
    origin.arguments.push_back(internal::shortest(options.annealed_at->in_celsius()));
  return origin;
}

}  // namespace

Quantity short_soak_matrix(const std::string& element,
                           const ShortSoakLimitOptions& options) {
  internal::require_element(element);
  return {origin_of(element, options),
          {{element}, {}, 0.0, 100.0},
          element + " in the matrix, short soak",
          "wt%",
          [element, options](const State& state) {
            return value_at(state, element, options);
          },
          [element, options](const State& state, const StateSlope& slope) {
            return slope_at(state, slope.input, element, options);
          }};
}

}  // namespace gibbsteel::quantities

#include "short_soak/shortening.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/candidate_phases.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/short_soak_quantity.hpp"
#include "internal/small_step.hpp"
#include "parameter_file/parameter_numbers.hpp"
#include "short_soak/short_soak_start.hpp"

namespace gibbsteel::internal {
namespace {

/// True when the state has no such limit; other errors are about the options.
bool has_none(const InputError& error) {
  const auto& problems = error.problems();
  return std::all_of(problems.begin(), problems.end(), [](const Problem& problem) {
    return problem.code == codes::kNoShortSoakLimit ||
           problem.code == "gibbsteel.input.260" ||
           problem.code == "gibbsteel.input.263";
  });
}

/// Whether a soak of minutes started from the annealed steel that is asked for.
/// @throws InputError gibbsteel.input.266 (another parameter set)
bool annealed_alike(const State& state, const ShortSoakLimitOptions& options) {
  if (!state.soak_time) return false;
  const auto &at = state.soak_time->annealed_at, &asked = options.annealed_at;
  // A timed soak of before version 3 of its pickle, annealed as usual.
  if (!at) return !asked && state.soak_time->minutes > 0.0;
  const Temperature wanted = asked ? *asked : usual_annealing(state, options);
  constexpr double kSame = 1e-6;
  return std::abs(at->in_kelvin() - wanted.in_kelvin()) < kSame;
}

/// @throws InputError gibbsteel.input.260 (another soak of minutes), .266
void check_same_soak(const State& state, const Shortening& shortening) {
  const auto& options = shortening.options;
  const SoakTime time = state.soak_time.value_or(SoakTime{});
  const bool limit = shortening.minutes == 0.0;
  if (time.minutes == shortening.minutes &&
      (limit || time.particle_micrometres == options.particle_micrometres) &&
      annealed_alike(state, options.annealed))
    return;
  const std::string size =
      limit ? "" : ", M3C of " + shortest(time.particle_micrometres) + " micrometre";
  const std::string annealed = time.annealed_at
                                   ? "annealed at " + degrees(*time.annealed_at)
                                   : "annealed at a temperature that it does not say";
  throw InputError(
      {{"gibbsteel.input.260", "state",
        "is a " + condition(state) + size + ", " + annealed + ", not the one asked for",
        "give the long hold, what steel.soak returns"}});
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
  soak.suppressed = all_kinds(*parameters, state.suppressed);
  const double kelvin = state.temperature.in_kelvin() + (heated ? step : 0.0);
  return steel.soak(Temperature::kelvin(kelvin), soak);
}

/// Central difference to temperature or an element.
double slope_to_condition(const State& state, const Input& input,
                          const Shortening& shortening) {
  const bool heated = input.kind == Input::Kind::temperature;
  const double up = heated ? 0.5 : 0.001;
  // No element below nothing.
  const double down = heated ? up : std::min(up, state.analysis.given[input.name]);
  const auto value = [&](double by) {
    return value_at(beside(state, input, by, shortening.options.annealed), shortening);
  };
  return (value(up) - value(-down)) / (up + down);
}

/// Central difference to a number of the file.
double slope_to_number(const State& state, const StateSlope& slope,
                       const Shortening& shortening) {
  const ParameterSet& set = *shortening.options.annealed.parameters;
  const auto all = parameter_file::parameter_numbers(set);
  const auto number = std::find_if(all.begin(), all.end(), [&](const auto& n) {
    return n.place == slope.input.name;
  });
  const double moved = small_step(state, slope, 1e-3);
  const double own = number->value == 0.0 ? 1.0 : 1e-3 * std::abs(number->value);
  const double step = moved > 0.0 ? moved : own;
  const auto value = [&](double by) {
    const auto other = std::make_shared<ParameterSet>(set);
    parameter_file::number_in(*other, *number) += by;
    const Shortening there = rebound(shortening, other);
    const Input as_hot{Input::Kind::temperature, "temperature", "K"};
    return value_at(beside(state, as_hot, 0.0, there.options.annealed), there);
  };
  return (value(step) - value(-step)) / (2.0 * step);
}

}  // namespace

double known_value(const State& state, const Shortening& shortening) {
  if (state.solve_report.status != shortening.status)
    return shortening.apply(state, shortening);
  check_same_soak(state, shortening);
  return shortening.of.value(state);
}

double value_at(const State& state, const Shortening& shortening) {
  try {
    return known_value(state, shortening);
  } catch (const InputError& error) {
    if (!has_none(error)) throw;
    return Occurrence::kUnknown;
  }
}

Shortening rebound(Shortening shortening, const SharedParameters& set) {
  shortening.options.annealed.parameters = set;
  shortening.of = of_set(shortening.of, set);
  return shortening;
}

double slope_at(const State& state, const StateSlope& slope,
                const Shortening& shortening) {
  if (state.solve_report.by_mass_balance()) return Occurrence::kUnknown;
  if (slope.input.kind != Input::Kind::parameter)
    return slope_to_condition(state, slope.input, shortening);
  return shortening.to_numbers ? slope_to_number(state, slope, shortening)
                               : Occurrence::kUnknown;
}

}  // namespace gibbsteel::internal

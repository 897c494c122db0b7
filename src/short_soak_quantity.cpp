/// The matrix by the short-soak limit, and anything after minutes, as a quantity; see
/// short_soak_limit.hpp and timed_soak.hpp.

#include <algorithm>
#include <functional>
#include <optional>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/timed_soak.hpp"
#include "internal/candidate_phases.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/quantity_condition.hpp"
#include "internal/why_no_short_soak.hpp"
#include "short_soak/soak_time.hpp"
#include "short_soak/timed_dissolution.hpp"

namespace gibbsteel::quantities {
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

/// How a long hold becomes a short soak, and what such a state says it is.
struct Shortening {
  SolveStatus status;
  std::optional<SoakTime> time;
  ShortSoakLimitOptions annealed;
  Quantity of;  ///< of such a soak
  /// The same of a long hold. @throws InputError where there is none
  std::function<double(const State&)> apply;
};

/// @throws InputError where it has no value, with the reason, and as short_soak_limit()
double known_value(const State& state, const Shortening& shortening) {
  if (state.solve_report.status != shortening.status) return shortening.apply(state);
  return state.soak_time == shortening.time ? shortening.of.value(state)
                                            : Occurrence::kUnknown;
}

double value_at(const State& state, const Shortening& shortening) {
  try {
    return known_value(state, shortening);
  } catch (const InputError& error) {
    if (!has_none(error)) throw;
    return Occurrence::kUnknown;
  }
}

/// A function of its own type, so that the reason for no value can be asked for.
struct ShortValue {
  Shortening shortening;
  double operator()(const State& state) const { return value_at(state, shortening); }
};

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
  soak.suppressed = internal::all_kinds(*parameters, state.suppressed);
  const double kelvin = state.temperature.in_kelvin() + (heated ? step : 0.0);
  return steel.soak(Temperature::kelvin(kelvin), soak);
}

/// Central difference; there is none to numbers of the parameter file.
double slope_at(const State& state, const Input& input, const Shortening& shortening) {
  if (input.kind == Input::Kind::parameter || state.solve_report.by_mass_balance())
    return Occurrence::kUnknown;
  const bool heated = input.kind == Input::Kind::temperature;
  const double up = heated ? 0.5 : 0.001;
  // No element below nothing.
  const double down = heated ? up : std::min(up, state.analysis.given[input.name]);
  const auto value = [&](double by) {
    return value_at(beside(state, input, by, shortening.annealed), shortening);
  };
  return (value(up) - value(-down)) / (up + down);
}

/// How to make it again; nothing for options that cannot be written down.
Quantity::Origin origin_of(const Shortening& shortening, const char* function,
                           std::vector<std::string> arguments) {
  if (shortening.annealed.parameters) return {};
  if (shortening.annealed.annealed_at)
    arguments.push_back(
        internal::shortest(shortening.annealed.annealed_at->in_celsius()));
  return {function, std::move(arguments)};
}

/// @param what  end of its name, see quantity_condition.hpp
Quantity shortened(const Shortening& shortening, Quantity::Origin origin,
                   const std::string& what) {
  const Quantity& of = shortening.of;
  const Quantity made{std::move(origin),
                      of.scope(),
                      of.name() + what,
                      of.unit(),
                      ShortValue{shortening},
                      [shortening](const State& state, const StateSlope& slope) {
                        return slope_at(state, slope.input, shortening);
                      }};
  return of.by_family() ? made.with_families() : made;
}

}  // namespace

Quantity short_soak_matrix(const std::string& element,
                           const ShortSoakLimitOptions& options) {
  const Shortening shortening{
      SolveStatus::short_soak_limit, std::nullopt, options, matrix(element),
      [options, element](const State& s) {
        return short_soak_limit(s, options).state.matrix.weight_percent[element];
      }};
  return shortened(shortening, origin_of(shortening, "short_soak_matrix", {element}),
                   internal::kShortSoakName);
}

Quantity timed_soak_matrix(const std::string& element, double minutes,
                           const TimedSoakOptions& options) {
  internal::check_soak_time({minutes}, options.particle_micrometres);
  const Shortening shortening{
      SolveStatus::timed_soak,
      SoakTime{minutes, options.particle_micrometres, options.annealed.annealed_at},
      options.annealed, matrix(element), [options, minutes, element](const State& s) {
        return internal::timed_matrix(s, minutes, options)[element];
      }};
  return shortened(shortening,
                   origin_of(shortening, "timed_soak_matrix",
                             {element, internal::shortest(minutes),
                              internal::shortest(options.particle_micrometres)}),
                   internal::kTimedSoakName + internal::minutes_text(minutes));
}

Quantity after_minutes(const Quantity& quantity, double minutes,
                       const TimedSoakOptions& options) {
  internal::check_soak_time({minutes}, options.particle_micrometres);
  const Shortening shortening{
      SolveStatus::timed_soak,
      SoakTime{minutes, options.particle_micrometres, options.annealed.annealed_at},
      options.annealed, quantity, [options, minutes, quantity](const State& s) {
        return quantity.value(internal::timed_state(s, minutes, options));
      }};
  Quantity::Origin origin;
  if (const auto& inner = quantity.origin();
      !inner.function.empty() && !options.annealed.parameters) {
    const auto& at = options.annealed.annealed_at;
    origin = {
        "quantity_after_minutes",
        {internal::shortest(minutes), internal::shortest(options.particle_micrometres),
         at ? internal::shortest(at->in_celsius()) : "", inner.function}};
    origin.arguments.insert(origin.arguments.end(), inner.arguments.begin(),
                            inner.arguments.end());
  }
  return shortened(shortening, std::move(origin),
                   internal::kTimedSoakName + internal::minutes_text(minutes));
}

}  // namespace gibbsteel::quantities

std::string gibbsteel::internal::why_no_short_soak(const Quantity& quantity,
                                                   const State& state) {
  const auto* value = quantity.function().target<quantities::ShortValue>();
  if (!value || !state.usable()) return "";
  try {
    quantities::known_value(state, value->shortening);
  } catch (const InputError& error) {
    const Problem& first = error.problems().front();
    return first.place + " " + first.what + "; " + first.remedy;
  }
  return "";
}

/// The matrix by the short-soak limit, and anything after minutes, as a quantity; see
/// short_soak_limit.hpp and timed_soak.hpp.

#include <functional>
#include <string>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/timed_soak.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_condition.hpp"
#include "internal/short_soak_quantity.hpp"
#include "short_soak/shortening.hpp"
#include "short_soak/soak_time.hpp"
#include "short_soak/timed_dissolution.hpp"

namespace gibbsteel::quantities {
namespace {

using internal::Shortening;

/// A function of its own type, so that the reason for no value can be asked for.
struct ShortValue {
  Shortening shortening;
  double operator()(const State& state) const {
    return internal::value_at(state, shortening);
  }
};

/// What the quantity says after the minutes; nothing where it has no value.
/// @param ask  Quantity::warnings() or Quantity::band()
template <class Answer>
Answer asked_after(const State& state, const Shortening& shortening,
                   Answer (Quantity::*ask)(const State&) const) {
  const Quantity& of = shortening.of;
  if (state.solve_report.status == shortening.status)
    return std::invoke(ask, of, state);
  try {
    return std::invoke(
        ask, of, internal::timed_state(state, shortening.minutes, shortening.options));
  } catch (const InputError&) {
    return {};
  }
}

/// How to make it again, with the parameter set as text; nothing for a function of the
/// user's own.
Quantity::Origin origin_of(const TimedSoakOptions& options, Quantity::Origin origin) {
  const auto& set = options.annealed.parameters;
  if (!set || origin.function.empty()) return origin;
  origin.arguments.insert(origin.arguments.begin(),
                          {write_parameters(*set), origin.function});
  return {"quantity_with_parameters", std::move(origin.arguments)};
}

/// Temperature of annealing in C, or "".
std::string annealed_text(const TimedSoakOptions& options) {
  const auto& at = options.annealed.annealed_at;
  return at ? internal::shortest(at->in_celsius()) : "";
}

Quantity shortened(const Shortening& shortening, Quantity::Origin origin,
                   std::string name) {
  const Quantity& of = shortening.of;
  const Quantity made{std::move(origin),
                      of.scope(),
                      std::move(name),
                      of.unit(),
                      ShortValue{shortening},
                      [shortening](const State& state, const StateSlope& slope) {
                        return internal::slope_at(state, slope, shortening);
                      }};
  const Quantity of_family = of.by_family() ? made.with_families() : made;
  const Quantity all = of.may_rest_on_more() ? of_family.resting_on_more() : of_family;
  if (!shortening.of_any) return all;
  const Quantity warned = all.with_warnings([shortening](const State& state) {
    return asked_after(state, shortening, &Quantity::warnings);
  });
  if (!of.has_band()) return warned;
  return warned.with_band([shortening](const State& state) {
    return asked_after(state, shortening, &Quantity::band);
  });
}

std::string timed_name(const Quantity& of, double minutes,
                       const TimedSoakOptions& options) {
  return of.name() + internal::kTimedSoakName + internal::minutes_text(minutes) +
         internal::unusual(options.particle_micrometres, options.annealed.annealed_at);
}

}  // namespace

Quantity short_soak_matrix(const std::string& element,
                           const ShortSoakLimitOptions& options) {
  TimedSoakOptions all;
  all.annealed = options;
  const Shortening shortening{SolveStatus::short_soak_limit, 0.0, all, matrix(element),
                              [element](const State& s, const Shortening& how) {
                                return short_soak_limit(s, how.options.annealed)
                                    .state.matrix.weight_percent[element];
                              }};
  Quantity::Origin origin{"short_soak_matrix", {element}};
  if (options.annealed_at) origin.arguments.push_back(annealed_text(all));
  return shortened(
      shortening, origin_of(all, std::move(origin)),
      shortening.of.name() + internal::kShortSoakName +
          internal::unusual(all.particle_micrometres, options.annealed_at));
}

Quantity timed_soak_matrix(const std::string& element, double minutes,
                           const TimedSoakOptions& options) {
  internal::check_soak_time({minutes}, options.particle_micrometres);
  const Shortening shortening{
      SolveStatus::timed_soak, minutes, options, matrix(element),
      [element](const State& s, const Shortening& how) {
        return internal::timed_matrix(s, how.minutes, how.options)[element];
      }};
  Quantity::Origin origin{"timed_soak_matrix",
                          {element, internal::shortest(minutes),
                           internal::shortest(options.particle_micrometres)}};
  if (options.annealed.annealed_at) origin.arguments.push_back(annealed_text(options));
  return shortened(shortening, origin_of(options, std::move(origin)),
                   timed_name(shortening.of, minutes, options));
}

namespace {

const Shortening* shortening_of(const Quantity& quantity) {
  const auto* value = quantity.function().target<ShortValue>();
  return value ? &value->shortening : nullptr;
}

}  // namespace

Quantity after_minutes(const Quantity& quantity, double minutes,
                       const TimedSoakOptions& options) {
  internal::check_soak_time({minutes}, options.particle_micrometres);
  if (shortening_of(quantity))
    throw InputError({{std::string(codes::kOtherKindOfThing), "quantity",
                       "is of a soak of minutes already: " + quantity.name(),
                       "give a quantity of the long hold"}});
  const Shortening shortening{
      SolveStatus::timed_soak,
      minutes,
      options,
      quantity,
      [](const State& s, const Shortening& how) {
        return how.of.value(internal::timed_state(s, how.minutes, how.options));
      },
      true};
  Quantity::Origin origin;
  if (const auto& inner = quantity.origin(); !inner.function.empty()) {
    origin = {
        "quantity_after_minutes",
        {internal::shortest(minutes), internal::shortest(options.particle_micrometres),
         annealed_text(options), inner.function}};
    origin.arguments.insert(origin.arguments.end(), inner.arguments.begin(),
                            inner.arguments.end());
  }
  return shortened(shortening, origin_of(options, std::move(origin)),
                   timed_name(quantity, minutes, options));
}

namespace {

Quantity replaced(const Quantity& quantity, const Shortening& shortening) {
  return shortened(shortening, quantity.origin(), quantity.name());
}

}  // namespace

}  // namespace gibbsteel::quantities

namespace gibbsteel::internal {

std::string why_no_short_soak(const Quantity& quantity, const State& state) {
  const auto* shortening = quantities::shortening_of(quantity);
  if (!shortening || !state.usable()) return "";
  try {
    known_value(state, *shortening);
  } catch (const InputError& error) {
    const Problem& first = error.problems().front();
    return first.place + " " + first.what + "; " + first.remedy;
  }
  return "";
}

Quantity of_steel(const Quantity& quantity, const SharedParameters& set) {
  const auto* shortening = quantities::shortening_of(quantity);
  if (!shortening) return quantity;
  Shortening bound = *shortening;
  if (!bound.options.annealed.parameters) bound = rebound(bound, set);
  bound.to_numbers = true;
  return quantities::replaced(quantity, bound);
}

Quantity of_set(const Quantity& quantity, const SharedParameters& set) {
  const auto* shortening = quantities::shortening_of(quantity);
  return shortening ? quantities::replaced(quantity, rebound(*shortening, set))
                    : quantity;
}

}  // namespace gibbsteel::internal

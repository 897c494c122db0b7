#pragma once
/// What a quantity of a soak of minutes is made of: value and slopes.

#include <functional>

#include "gibbsteel/quantity.hpp"
#include "gibbsteel/timed_soak.hpp"

namespace gibbsteel::internal {

/// How a long hold becomes a short soak, and what is asked of it.
struct Shortening {
  SolveStatus status;
  double minutes;  ///< 0 for the limit
  TimedSoakOptions options;
  Quantity of;  ///< of such a soak
  /// The same of a long hold. @throws InputError where there is none
  std::function<double(const State&, const Shortening&)> apply;
  bool of_any = false;      ///< of any quantity, which may have warnings
  bool to_numbers = false;  ///< has slopes to numbers of the file, which cost soaks
};

/// @throws InputError where it has no value, with the reason, and as short_soak_limit()
double known_value(const State& state, const Shortening& shortening);

/// NaN where it has none. @throws InputError as short_soak_limit(), of the options
double value_at(const State& state, const Shortening& shortening);

/// Central difference of soaks; NaN of a soak of minutes itself.
double slope_at(const State& state, const StateSlope& slope,
                const Shortening& shortening);

/// With another parameter set.
Shortening rebound(Shortening shortening, const SharedParameters& set);

}  // namespace gibbsteel::internal

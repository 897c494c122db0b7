#pragma once
/// What a user should know about a state: codes 3xx.

#include <vector>

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/state.hpp"
#include "gibbsteel/temperature_unit.hpp"

namespace gibbsteel::internal {

/// @param state  complete but for its warnings
/// @param unit   in which its temperature was given
std::vector<Warning> soak_warnings(const ParameterSet& set, const State& state,
                                   TemperatureUnit unit = TemperatureUnit::celsius);

/// True when a steel resembles the one for which a solidus is known: at most 0.15 less
/// carbon or 0.5 more, every other element within 0.5 or a fifth of it, whichever is
/// more [weight percent]. Carbon lowers the solidus, so that a steel richer in it melts
/// no later. Wide enough for the Mn and Si that a certificate shows and a published
/// grade leaves out: a warning too many costs less than one too few. The rule is this
/// library's own.
bool resembles(const SolidusBound& bound, const NamedValues& weight_percent);

}  // namespace gibbsteel::internal

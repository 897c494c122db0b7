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

/// Of one soak: where the matrix is not austenite at a temperature in F, and the same
/// number would be a hardening temperature in C, warning 305 asks whether C was meant.
void ask_for_celsius(Temperature given, TemperatureUnit unit,
                     std::vector<Warning>& warnings);

}  // namespace gibbsteel::internal

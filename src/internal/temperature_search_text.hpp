#pragma once
/// Status and sentence of a search for a value.

#include "gibbsteel/temperature_for.hpp"

namespace gibbsteel::internal {

/// Fills status and text from everything else.
void conclude(TemperatureSearch& search);

}  // namespace gibbsteel::internal

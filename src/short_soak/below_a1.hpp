#pragma once
/// Temperatures at which an annealed steel holds no austenite.

#include "gibbsteel/steel.hpp"

namespace gibbsteel::internal {

bool holds_austenite(const State& state);

/// Hottest up to `high` without austenite, to a millionth of a degree: `high` itself
/// where there is none.
/// @pre there is none at `low`
Temperature hottest_without_austenite(const Steel& steel, Temperature low,
                                      Temperature high, const SoakOptions& options);

}  // namespace gibbsteel::internal

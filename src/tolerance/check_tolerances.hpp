#pragma once
/// Refuses tolerances that cannot be meant.

#include "gibbsteel/tolerance.hpp"

namespace gibbsteel::internal {

/// @throws InputError as tolerance_band()
void check_tolerances(const Steel& steel, Temperature t,
                      const HeatTolerances& tolerances,
                      const ToleranceOptions& options);

}  // namespace gibbsteel::internal

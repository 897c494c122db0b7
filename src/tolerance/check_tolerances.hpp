#pragma once
/// Refuses tolerances that cannot be meant.

#include "gibbsteel/errors.hpp"
#include "gibbsteel/tolerance.hpp"

namespace gibbsteel::internal {

/// @throws InputError as tolerance_band()
void check_tolerances(const Steel& steel, Temperature t,
                      const HeatTolerances& tolerances,
                      const ToleranceOptions& options);

/// Adds what is wrong with the settings of the sampling: gibbsteel.input.276.
void check_sampling(std::size_t samples, const std::vector<double>& percentiles,
                    std::vector<Problem>& problems);

}  // namespace gibbsteel::internal

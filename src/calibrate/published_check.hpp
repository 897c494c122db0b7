#pragma once
/// Counts published measurements before and after a calibration.

#include "calibrate/calibration_problem.hpp"

namespace gibbsteel::internal {

/// Fills result.published. Soaks them twice: two evaluations for `progress`.
/// @param result  numbers, measurements and weights are read
/// @returns false when stopped
bool check_published(const CalibrationProblem& problem, const SharedParameters& below,
                     const CalibrationOptions& options, std::size_t& evaluations,
                     Calibration& result);

}  // namespace gibbsteel::internal

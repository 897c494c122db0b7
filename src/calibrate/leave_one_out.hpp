#pragma once
/// Cross-validation: every steel predicted by a fit without it.

#include "calibrate/shift_model.hpp"

namespace gibbsteel::internal {

/// Fills residual_left_out of the measurements and `steels` of the result; nothing when
/// the measurements fitted to are of one steel only.
/// @param fit  the fit to all: where the others start
/// @return false when `progress` stopped it
bool leave_one_out(const CalibrationProblem& problem, const RobustFit& fit,
                   const RobustLoss& loss, const CalibrationOptions& options,
                   std::size_t& evaluations, Calibration& result);

}  // namespace gibbsteel::internal

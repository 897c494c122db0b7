#pragma once
/// Correlations of fitted numbers as a layer can state them.

#include <string>
#include <vector>

#include "calibrate/calibration_problem.hpp"

namespace gibbsteel::internal {

/// Between fitted coefficients from the covariance, and those that the set states
/// between others in terms that the layer replaces. What does not fit is said in
/// `remarks`.
std::vector<Correlation> layer_correlations(const CalibrationProblem& problem,
                                            const Calibration& result,
                                            const Provenance& provenance,
                                            std::vector<std::string>& remarks);

}  // namespace gibbsteel::internal

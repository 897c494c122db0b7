#pragma once
/// Correlations of fitted numbers as a layer can state them.

#include <string>
#include <vector>

#include "calibrate/calibration_problem.hpp"

namespace gibbsteel::internal {

/// Name of a fitted coefficient; none for a volume.
std::optional<CoefficientName> coefficient_name(
    const ParameterSet& set, const parameter_file::ParameterNumber& number);

/// Between fitted coefficients from the covariance, and those that the set states
/// between others in terms that the layer replaces. What does not fit is said in
/// `remarks`.
std::vector<Correlation> layer_correlations(const CalibrationProblem& problem,
                                            const Calibration& result,
                                            const Provenance& provenance,
                                            std::vector<std::string>& remarks);

}  // namespace gibbsteel::internal

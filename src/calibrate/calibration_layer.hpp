#pragma once
/// The layer that a calibration writes.

#include <Eigen/Core>
#include <string>
#include <vector>

#include "calibrate/calibration_problem.hpp"

namespace gibbsteel::internal {

struct LayerText {
  std::string text;
  std::vector<std::string> remarks;  ///< on what it cannot hold
};

/// @param result      numbers, measurements and covariance are read
/// @param seen_by     of each number: measurements of the fit that feel it
LayerText calibration_layer(const CalibrationProblem& problem,
                            const Calibration& result,
                            const std::vector<std::vector<std::size_t>>& seen_by,
                            const CalibrationOptions& options);

}  // namespace gibbsteel::internal

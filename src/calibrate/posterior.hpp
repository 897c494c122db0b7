#pragma once
/// What a fit knows about the numbers, Eq. (K4) and (K5).

#include <Eigen/Core>
#include <vector>

#include "calibrate/robust_fit.hpp"

namespace gibbsteel::internal {

/// In shifts: (J^T W J + 1)^-1.
Eigen::MatrixXd shift_covariance(const RobustFit& fit);

/// Best seen first; as many as there are numbers.
std::vector<SeenDirection> seen_directions(const RobustFit& fit);

}  // namespace gibbsteel::internal

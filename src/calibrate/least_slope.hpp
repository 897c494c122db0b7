#pragma once
/// The shortest vector between several, Eq. (K6).

#include <Eigen/Core>

namespace gibbsteel::internal {

/// Weights w >= 0 with sum 1 for which |A w| is least, by exchange between two columns
/// (Mitchell, Dem'yanov & Malozemov, SIAM J. Control 12 (1974) 19, from memory).
/// @param columns  A, at least one column
Eigen::VectorXd least_slope_weights(const Eigen::MatrixXd& columns);

}  // namespace gibbsteel::internal

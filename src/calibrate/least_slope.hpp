#pragma once
/// The shortest vector between several, Eq. (K6).

#include <Eigen/Core>

namespace gibbsteel::internal {

/// Weights w >= 0 with sum 1 for which |A w| is least, by an active set (Wolfe, Math.
/// Programming 11 (1976) 128, from memory): columns of any lengths, also nearly alike.
/// @param columns  A, at least one column
Eigen::VectorXd least_slope_weights(const Eigen::MatrixXd& columns);

}  // namespace gibbsteel::internal

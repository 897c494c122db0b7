#pragma once
/// Minimum of Eq. (K1) in shifts x = (p - p0) / s: rounds of Levenberg-Marquardt with
/// fixed weights.

#include <Eigen/Core>
#include <functional>

#include "calibrate/robust_loss.hpp"

namespace gibbsteel::internal {

struct FitPoint {
  Eigen::VectorXd residuals;  ///< NaN: not usable at this point
  Eigen::MatrixXd slopes;     ///< of the residuals, in x; 0 where not usable
  bool stopped = false;       ///< by the caller: the rest counts for nothing
};

using FitModel = std::function<FitPoint(const Eigen::VectorXd& x)>;

struct RobustFit {
  CalibrationStatus status = CalibrationStatus::nothing_usable;
  Eigen::VectorXd x;
  FitPoint point;           ///< at x
  Eigen::VectorXd weights;  ///< at x; 0 where not usable
  double misfit = 0.0;      ///< Eq. (K1) over what is usable at x
  int rounds = 0;
  std::size_t evaluations = 0;
};

/// @param most  evaluations of the model
RobustFit robust_fit(const FitModel& model, const Eigen::VectorXd& start,
                     const RobustLoss& loss, std::size_t most);

/// Weights of the residuals; 0 where one is NaN.
Eigen::VectorXd weights_of(const FitPoint& point, const RobustLoss& loss);
double misfit_of(const FitPoint& point, const Eigen::VectorXd& x,
                 const RobustLoss& loss);

}  // namespace gibbsteel::internal

#pragma once
/// Minimum of Eq. (K1) in shifts x = (p - p0) / s: rounds of Levenberg-Marquardt with
/// fixed weights, and steps down from edges where those end.

#include <Eigen/Core>

#include "calibrate/remembered_model.hpp"
#include "calibrate/robust_loss.hpp"

namespace gibbsteel::internal {

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
/// That one more step must promise to be worth while.
double left_to_gain(double misfit);

}  // namespace gibbsteel::internal

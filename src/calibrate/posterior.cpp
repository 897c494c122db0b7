#include "calibrate/posterior.hpp"

#include <Eigen/SVD>
#include <cmath>

namespace gibbsteel::internal {
namespace {

/// W^1/2 J with at least as many rows as columns, so that V is square.
Eigen::MatrixXd weighted_slopes(const RobustFit& fit) {
  const auto rows = fit.point.slopes.rows(), columns = fit.point.slopes.cols();
  Eigen::MatrixXd slopes = Eigen::MatrixXd::Zero(std::max(rows, columns), columns);
  slopes.topRows(rows) = fit.weights.cwiseSqrt().asDiagonal() * fit.point.slopes;
  return slopes;
}

Eigen::JacobiSVD<Eigen::MatrixXd> decomposed(const RobustFit& fit) {
  return Eigen::JacobiSVD<Eigen::MatrixXd>(weighted_slopes(fit),
                                           Eigen::ComputeThinU | Eigen::ComputeThinV);
}

}  // namespace

Eigen::MatrixXd shift_covariance(const RobustFit& fit) {
  const auto svd = decomposed(fit);
  const Eigen::ArrayXd t = svd.singularValues().array();
  return svd.matrixV() * (1.0 / (1.0 + t * t)).matrix().asDiagonal() *
         svd.matrixV().transpose();
}

std::vector<SeenDirection> seen_directions(const RobustFit& fit) {
  const auto svd = decomposed(fit);
  std::vector<SeenDirection> directions;
  for (Eigen::Index k = 0; k < svd.singularValues().size(); ++k) {
    SeenDirection direction;
    direction.singular_value = svd.singularValues()[k];
    direction.ratio = 1.0 / std::hypot(1.0, direction.singular_value);
    Eigen::VectorXd along = svd.matrixV().col(k);
    Eigen::Index largest = 0;
    along.cwiseAbs().maxCoeff(&largest);
    if (along[largest] < 0.0) along = -along;
    direction.along.assign(along.begin(), along.end());
    directions.push_back(std::move(direction));
  }
  return directions;
}

}  // namespace gibbsteel::internal

#include "calibrate/shift_model.hpp"

namespace gibbsteel::internal {

ShiftModel::ShiftModel(const CalibrationProblem& problem, std::vector<bool> wanted,
                       const std::function<bool(std::size_t)>& progress,
                       std::size_t& evaluations)
    : problem_(problem),
      wanted_(std::move(wanted)),
      progress_(progress),
      evaluations_(evaluations),
      left_out_(wanted_.size(), 0),
      reasons_(wanted_.size()) {}

std::vector<double> ShiftModel::numbers_at(const Eigen::VectorXd& x) const {
  std::vector<double> values;
  for (std::size_t j = 0; j < problem_.numbers().size(); ++j)
    values.push_back(problem_.numbers()[j].value +
                     problem_.prior_deviations()[j] * x[static_cast<Eigen::Index>(j)]);
  return values;
}

FitPoint ShiftModel::operator()(const Eigen::VectorXd& x) {
  const auto& measurements = problem_.measurements();
  CalibrationPoint computed = problem_.at(numbers_at(x), wanted_);
  const auto residuals = residuals_of(measurements, computed.values);
  FitPoint point;
  point.residuals = Eigen::Map<const Eigen::VectorXd>(
      residuals.data(), static_cast<Eigen::Index>(residuals.size()));
  point.slopes = std::move(computed.slopes);
  for (std::size_t i = 0; i < measurements.size(); ++i) {
    point.slopes.row(static_cast<Eigen::Index>(i)) /= measurements[i].uncertainty;
    if (computed.troubles[i].empty()) continue;
    ++left_out_[i];
    reasons_[i] = computed.troubles[i];
  }
  const auto& deviations = problem_.prior_deviations();
  for (std::size_t j = 0; j < deviations.size(); ++j)
    point.slopes.col(static_cast<Eigen::Index>(j)) *= deviations[j];
  stopped_ = progress_ && !progress_(++evaluations_);
  point.stopped = stopped_;
  return point;
}

std::vector<double> residuals_of(const std::vector<Measurement>& measurements,
                                 const std::vector<double>& computed) {
  std::vector<double> residuals;
  for (std::size_t i = 0; i < measurements.size(); ++i)
    residuals.push_back((computed[i] - measurements[i].value) /
                        measurements[i].uncertainty);
  return residuals;
}

}  // namespace gibbsteel::internal

#pragma once
/// Calibration problem as residuals over shifts, with a record of what was left out.

#include <vector>

#include "calibrate/calibration_problem.hpp"
#include "calibrate/robust_fit.hpp"

namespace gibbsteel::internal {

class ShiftModel {
 public:
  /// @param wanted  measurements that are fitted to
  /// Keep all alive. `evaluations` counts on over several models.
  ShiftModel(const CalibrationProblem& problem, std::vector<bool> wanted,
             const std::function<bool(std::size_t)>& progress,
             std::size_t& evaluations);

  FitPoint operator()(const Eigen::VectorXd& x);

  std::vector<double> numbers_at(const Eigen::VectorXd& x) const;
  bool stopped() const noexcept { return stopped_; }
  /// Of each measurement: evaluations without it, and why the last time.
  const std::vector<std::size_t>& left_out() const noexcept { return left_out_; }
  const std::vector<std::string>& reasons() const noexcept { return reasons_; }

 private:
  const CalibrationProblem& problem_;
  std::vector<bool> wanted_;
  const std::function<bool(std::size_t)>& progress_;
  std::size_t& evaluations_;
  bool stopped_ = false;
  std::vector<std::size_t> left_out_;
  std::vector<std::string> reasons_;
};

/// (computed - measured) / uncertainty, for all.
std::vector<double> residuals_of(const std::vector<Measurement>& measurements,
                                 const std::vector<double>& computed);

}  // namespace gibbsteel::internal

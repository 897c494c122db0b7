#pragma once
/// Measurements as functions of the free numbers.

#include <Eigen/Core>
#include <string>
#include <vector>

#include "gibbsteel/calibrate.hpp"
#include "parameter_file/parameter_numbers.hpp"

namespace gibbsteel::internal {

/// The measurements computed with one set of numbers.
struct CalibrationPoint {
  std::vector<double> values;         ///< NaN where not usable
  std::vector<std::string> troubles;  ///< why; empty where usable
  Eigen::MatrixXd slopes;             ///< of the values, per unit; 0 where not usable
};

class CalibrationProblem {
 public:
  using Number = parameter_file::ParameterNumber;

  /// Checks everything. @throws InputError as calibrate()
  CalibrationProblem(SharedParameters set, const std::vector<FreeNumber>& numbers,
                     const std::vector<Measurement>& measurements,
                     const CalibrationOptions& options);

  const ParameterSet& set() const noexcept { return *set_; }
  const std::vector<Measurement>& measurements() const noexcept {
    return measurements_;
  }
  const std::vector<Number>& numbers() const noexcept { return numbers_; }
  const std::vector<double>& prior_deviations() const noexcept { return deviations_; }
  /// Where the fit starts, in prior standard deviations from the values of the set.
  const Eigen::VectorXd& start() const noexcept { return start_; }

  /// The set with these values of the numbers instead.
  SharedParameters with(const std::vector<double>& values) const;
  /// Those wanted; the others get a NaN and no reason. Soaks that several measurements
  /// share are done once, several at a time.
  CalibrationPoint at(const std::vector<double>& values,
                      const std::vector<bool>& wanted) const;

 private:
  struct Soaked {
    State state;
    std::vector<StateSlope> slopes;  ///< temperature first, then as numbers_
    SharedParameters set = {};
  };
  Soaked soak(const Measurement& measurement, const SharedParameters& set) const;
  void fill(const Soaked& soaked, std::size_t i, CalibrationPoint& point) const;

  SharedParameters set_;
  std::vector<Measurement> measurements_;
  std::size_t threads_;
  std::vector<Number> numbers_;
  std::vector<double> deviations_;
  Eigen::VectorXd start_;
  std::vector<std::string> places_;
  std::vector<std::size_t> first_alike_;  ///< of each: the first with the same soak
};

}  // namespace gibbsteel::internal

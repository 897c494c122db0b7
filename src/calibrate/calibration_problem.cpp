#include "calibrate/calibration_problem.hpp"

#include <cmath>

#include "calibrate/calibration_checks.hpp"
#include "internal/parallel_for.hpp"
#include "internal/short_soak_quantity.hpp"
#include "internal/slopes_of_soak.hpp"

namespace gibbsteel::internal {

CalibrationProblem::CalibrationProblem(SharedParameters set,
                                       const std::vector<FreeNumber>& numbers,
                                       const std::vector<Measurement>& measurements,
                                       const CalibrationOptions& options)
    : set_(std::move(set)), measurements_(measurements), threads_(options.threads) {
  for (auto& [number, deviation] :
       checked_calibration(set_, numbers, measurements, options)) {
    places_.push_back(number.place);
    numbers_.push_back(std::move(number));
    deviations_.push_back(deviation);
  }
  for (Measurement& m : measurements_) m.quantity = of_steel(m.quantity, set_);
  start_ = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(numbers.size()));
  for (std::size_t j = 0; j < numbers.size(); ++j)
    if (numbers[j].start)
      start_[static_cast<Eigen::Index>(j)] =
          (*numbers[j].start - numbers_[j].value) / deviations_[j];
  for (std::size_t i = 0; i < measurements_.size(); ++i) {
    std::size_t first = 0;
    while (!same_soak(measurements_[first], measurements_[i])) ++first;
    first_alike_.push_back(first);
  }
}

SharedParameters CalibrationProblem::with(const std::vector<double>& values) const {
  auto set = std::make_shared<ParameterSet>(*set_);
  for (std::size_t j = 0; j < numbers_.size(); ++j)
    parameter_file::number_in(*set, numbers_[j]) = values[j];
  return set;
}

CalibrationProblem::Soaked CalibrationProblem::soak(const Measurement& measurement,
                                                    const SharedParameters& set) const {
  const Steel steel(measurement.weight_percent, {measurement.steel, set, false});
  const SoakProblem problem(steel, measurement.soak);
  const Equilibrium result = problem.solve(measurement.temperature);
  Soaked soaked{problem.state_of(result), {}, set};
  soaked.slopes = slopes_of_soak(problem, result, soaked.state,
                                 {std::vector<std::string>{}, places_, false});
  return soaked;
}

void CalibrationProblem::fill(const Soaked& soaked, std::size_t i,
                              CalibrationPoint& point) const {
  const Quantity quantity = of_set(measurements_[i].quantity, soaked.set);
  const auto row = static_cast<Eigen::Index>(i);
  std::string& trouble = point.troubles[i];
  if (!soaked.state.usable()) {
    trouble = soaked.state.solve_report.brief();
    return;
  }
  const double value = quantity.value(soaked.state);
  if (std::isnan(value)) trouble = quantity.name() + " does not exist in this state";
  for (std::size_t j = 0; j < numbers_.size() && trouble.empty(); ++j) {
    const StateSlope& slope = soaked.slopes[j + 1];
    const double change = quantity.slope(soaked.state, slope);
    point.slopes(row, static_cast<Eigen::Index>(j)) = change;
    if (!std::isfinite(change))
      trouble = slope.remark.empty() ? quantity.name() + " has no slope" : slope.remark;
  }
  if (trouble.empty())
    point.values[i] = value;
  else
    point.slopes.row(row).setZero();
}

CalibrationPoint CalibrationProblem::at(const std::vector<double>& values,
                                        const std::vector<bool>& wanted) const {
  const std::size_t size = measurements_.size();
  CalibrationPoint point{
      std::vector<double>(size, Occurrence::kUnknown), std::vector<std::string>(size),
      Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(size),
                            static_cast<Eigen::Index>(values.size()))};
  for (std::size_t j = 0; j < values.size(); ++j)
    if (numbers_[j].entry == Number::Entry::volume && values[j] <= 0.0) {
      for (std::size_t i = 0; i < size; ++i)
        if (wanted[i]) point.troubles[i] = "a volume was tried that is not above 0";
      return point;
    }
  std::vector<bool> needed(size, false);
  for (std::size_t i = 0; i < size; ++i)
    if (wanted[i]) needed[first_alike_[i]] = true;
  const SharedParameters set = with(values);
  std::vector<Soaked> soaks(size);
  parallel_for(size, threads_, [&](std::size_t i) {
    if (needed[i]) soaks[i] = soak(measurements_[i], set);
  });
  for (std::size_t i = 0; i < size; ++i)
    if (wanted[i]) fill(soaks[first_alike_[i]], i, point);
  return point;
}

}  // namespace gibbsteel::internal

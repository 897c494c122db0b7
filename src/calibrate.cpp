#include "gibbsteel/calibrate.hpp"

#include <cmath>

#include "calibrate/calibration_layer.hpp"
#include "calibrate/layer_correlations.hpp"
#include "calibrate/leave_one_out.hpp"
#include "calibrate/posterior.hpp"
#include "calibrate/published_check.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "internal/error_codes.hpp"
#include "parameter_file/number_in_words.hpp"
#include "parameter_file/uncertain_numbers.hpp"

namespace gibbsteel {
namespace {

using namespace internal;

/// A measurement feels a number when a prior standard deviation of it moves the
/// measurement by this much of its uncertainty.
constexpr double kFelt = 0.01;

void list_numbers(const CalibrationProblem& problem, Calibration& result) {
  for (std::size_t j = 0; j < problem.numbers().size(); ++j) {
    const auto& number = problem.numbers()[j];
    CalibratedNumber& out = result.numbers.emplace_back();
    out.place = number.place;
    out.unit = number.unit;
    out.text = parameter_file::number_in_words(problem.set(), number);
    out.before = out.after = number.value;
    out.prior_deviation = out.deviation = problem.prior_deviations()[j];
  }
}

void list_measurements(const CalibrationProblem& problem, Calibration& result) {
  for (const Measurement& m : problem.measurements()) {
    MeasurementOutcome& out = result.measurements.emplace_back();
    out.steel = m.steel;
    out.record = m.record;
    out.quantity = m.quantity.name();
    out.unit = m.quantity.unit();
    out.temperature = m.temperature;
    out.value = m.value;
    out.uncertainty = m.uncertainty;
    out.held_back = m.held_back;
  }
}

/// Computed values and residuals of all, those held back included.
void compare(const CalibrationProblem& problem, const std::vector<double>& numbers,
             double MeasurementOutcome::*value, double MeasurementOutcome::*residual,
             Calibration& result) {
  const std::vector<bool> all(result.measurements.size(), true);
  const CalibrationPoint point = problem.at(numbers, all);
  const auto residuals = residuals_of(problem.measurements(), point.values);
  for (std::size_t i = 0; i < residuals.size(); ++i) {
    result.measurements[i].*value = point.values[i];
    result.measurements[i].*residual = residuals[i];
    if (result.measurements[i].held_back || result.numbers.empty())
      result.measurements[i].reason = point.troubles[i];
  }
}

void take_numbers(const CalibrationProblem& problem, const RobustFit& fit,
                  const std::vector<double>& values, Calibration& result) {
  const Eigen::MatrixXd shifts = shift_covariance(fit);
  const auto& deviations = problem.prior_deviations();
  for (std::size_t i = 0; i < values.size(); ++i)
    for (std::size_t j = 0; j < values.size(); ++j)
      result.covariance.push_back(
          deviations[i] * deviations[j] *
          shifts(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)));
  for (std::size_t j = 0; j < values.size(); ++j) {
    result.numbers[j].after = values[j];
    result.numbers[j].deviation = std::sqrt(result.covariance[j * values.size() + j]);
  }
  result.directions = seen_directions(fit);
}

/// Of each number, the measurements in the fit that feel it.
std::vector<std::vector<std::size_t>> felt_by(const RobustFit& fit) {
  std::vector<std::vector<std::size_t>> felt;
  for (Eigen::Index j = 0; j < fit.x.size(); ++j) {
    felt.emplace_back();
    for (Eigen::Index i = 0; i < fit.weights.size(); ++i)
      if (fit.weights[i] > 0.0 && std::abs(fit.point.slopes(i, j)) > kFelt)
        felt.back().push_back(static_cast<std::size_t>(i));
  }
  return felt;
}

void write_layer(const CalibrationProblem& problem, const RobustFit& fit,
                 const SharedParameters& below, const CalibrationOptions& options,
                 Calibration& result) {
  LayerText layer = calibration_layer(problem, result, felt_by(fit), options);
  result.layer = std::move(layer.text);
  result.remarks = std::move(layer.remarks);
  result.parameters = parse_parameters(result.layer, options.file_name, below);
}

double misfit_before(const Calibration& result, const RobustLoss& loss) {
  double sum = 0.0;
  for (const MeasurementOutcome& m : result.measurements)
    if (!m.held_back && !std::isnan(m.residual_before))
      sum += loss.value(m.residual_before);
  return sum;
}

std::string reason_of(CalibrationStatus status, bool used_up) {
  switch (status) {
    case CalibrationStatus::converged:
      return "";
    case CalibrationStatus::stalled:
      if (used_up)
        return "the evaluations allowed were used up on the way down an edge, where a "
               "phase appears or vanishes; the numbers are the best found";
      return "no step makes the misfit smaller, but it jumps or has an edge here, as "
             "where a phase appears or vanishes";
    case CalibrationStatus::not_converged:
      return "the evaluations allowed were used up";
    case CalibrationStatus::nothing_usable:
      return "no measurement could be computed with the file as it is";
    case CalibrationStatus::cancelled:
      return "stopped by the caller";
    case CalibrationStatus::compared:
      return "no number was free";
  }
  return "";
}

/// Numbers, residuals and weights of the fit.
void take_fit(const CalibrationProblem& problem, const ShiftModel& model,
              const RobustFit& fit, const RobustLoss& loss, Calibration& result) {
  const std::vector<double> values = model.numbers_at(fit.x);
  compare(problem, model.numbers_at(0.0 * fit.x), &MeasurementOutcome::before,
          &MeasurementOutcome::residual_before, result);
  compare(problem, values, &MeasurementOutcome::after,
          &MeasurementOutcome::residual_after, result);
  for (std::size_t i = 0; i < result.measurements.size(); ++i) {
    MeasurementOutcome& m = result.measurements[i];
    m.weight = fit.weights[static_cast<Eigen::Index>(i)];
    m.left_out = model.left_out()[i];
    if (!m.held_back) m.reason = model.reasons()[i];
  }
  take_numbers(problem, fit, values, result);
  result.misfit_before = misfit_before(result, loss);
  result.misfit_after = fit.misfit;
}

/// Cross-validation, published measurements and the layer; false when stopped.
bool add_checks_and_layer(const CalibrationProblem& problem, const RobustFit& fit,
                          const SharedParameters& below, const RobustLoss& loss,
                          const CalibrationOptions& options, std::size_t& evaluations,
                          Calibration& result) {
  if (options.cross_validate &&
      !leave_one_out(problem, fit, loss, options, evaluations, result))
    return false;
  if (options.check_published &&
      !check_published(problem, below, options, evaluations, result))
    return false;
  write_layer(problem, fit, below, options, result);
  return true;
}

void fit_numbers(const CalibrationProblem& problem, const SharedParameters& below,
                 const RobustLoss& loss, const CalibrationOptions& options,
                 Calibration& result) {
  std::vector<bool> wanted;
  for (const Measurement& m : problem.measurements()) wanted.push_back(!m.held_back);
  std::size_t evaluations = 0;
  ShiftModel model(problem, wanted, options.progress, evaluations);
  const RobustFit fit =
      robust_fit([&](const Eigen::VectorXd& x) { return model(x); }, problem.start(),
                 loss, static_cast<std::size_t>(options.most_evaluations));
  result.status = model.stopped() ? CalibrationStatus::cancelled : fit.status;
  result.rounds = fit.rounds;
  result.evaluations = fit.evaluations;
  if (!model.stopped()) take_fit(problem, model, fit, loss, result);
  const bool found = result.status == CalibrationStatus::converged ||
                     result.status == CalibrationStatus::stalled;
  if (found &&
      !add_checks_and_layer(problem, fit, below, loss, options, evaluations, result))
    result.status = CalibrationStatus::cancelled;
  const auto most = static_cast<std::size_t>(options.most_evaluations);
  result.reason = reason_of(result.status, result.evaluations >= most);
}

}  // namespace

std::vector<FreeNumber> stated_numbers(const ParameterSet& set) {
  std::vector<FreeNumber> stated;
  for (const auto& number : parameter_file::uncertain_numbers(set))
    stated.push_back({number.place});
  if (stated.empty())
    throw InputError({{std::string(codes::kFreeNumber), "numbers",
                       "none was named, and the set states no standard deviation",
                       "name numbers with their prior standard deviations"}});
  return stated;
}

Calibration calibrate(const std::vector<Measurement>& measurements,
                      const std::vector<FreeNumber>& numbers,
                      const SharedParameters& on, const CalibrationOptions& options) {
  const SharedParameters below = on ? on : default_parameters();
  const CalibrationProblem problem(below, numbers, measurements, options);
  const RobustLoss loss = robust_loss(options.loss, options.loss_scale);
  Calibration result;
  result.below = below->title();
  result.loss = loss.kind;
  result.loss_scale = loss.scale;
  list_numbers(problem, result);
  list_measurements(problem, result);
  if (numbers.empty()) {
    compare(problem, {}, &MeasurementOutcome::before,
            &MeasurementOutcome::residual_before, result);
    result.status = CalibrationStatus::compared;
    result.reason = reason_of(result.status, false);
  } else {
    fit_numbers(problem, below, loss, options, result);
  }
  return result;
}

}  // namespace gibbsteel

#include "calibrate/leave_one_out.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {
namespace {

std::vector<std::string> steels_of(const Calibration& result) {
  std::vector<std::string> names;
  for (const MeasurementOutcome& m : result.measurements)
    if (!m.held_back && std::find(names.begin(), names.end(), m.steel) == names.end())
      names.push_back(m.steel);
  return names;
}

/// Root mean squares over the measurements that have all three residuals.
LeftOutSteel summary(const std::string& steel, CalibrationStatus status,
                     const Calibration& result) {
  LeftOutSteel out{steel, 0, 0.0, 0.0, 0.0, status};
  for (const MeasurementOutcome& m : result.measurements) {
    if (m.steel != steel || m.held_back) continue;
    const double three[] = {m.residual_before, m.residual_after, m.residual_left_out};
    if (std::any_of(std::begin(three), std::end(three),
                    [](double r) { return std::isnan(r); }))
      continue;
    ++out.count;
    out.before += three[0] * three[0];
    out.fitted += three[1] * three[1];
    out.predicted += three[2] * three[2];
  }
  const auto count = static_cast<double>(out.count);
  for (double* sum : {&out.before, &out.fitted, &out.predicted})
    *sum = out.count > 0 ? std::sqrt(*sum / count) : Occurrence::kUnknown;
  return out;
}

}  // namespace

bool leave_one_out(const CalibrationProblem& problem, const RobustFit& fit,
                   const RobustLoss& loss, const CalibrationOptions& options,
                   std::size_t& evaluations, Calibration& result) {
  const std::vector<std::string> steels = steels_of(result);
  if (steels.size() < 2) return true;
  for (const std::string& steel : steels) {
    std::vector<bool> others, own;
    for (const MeasurementOutcome& m : result.measurements) {
      others.push_back(!m.held_back && m.steel != steel);
      own.push_back(!m.held_back && m.steel == steel);
    }
    ShiftModel model(problem, others, options.progress, evaluations);
    const RobustFit without =
        robust_fit([&](const Eigen::VectorXd& x) { return model(x); }, fit.x, loss,
                   static_cast<std::size_t>(options.most_evaluations));
    if (model.stopped()) return false;
    const auto residuals = residuals_of(
        problem.measurements(), problem.at(model.numbers_at(without.x), own).values);
    for (std::size_t i = 0; i < residuals.size(); ++i)
      if (own[i] && without.status != CalibrationStatus::nothing_usable)
        result.measurements[i].residual_left_out = residuals[i];
    result.steels.push_back(summary(steel, without.status, result));
  }
  return true;
}

}  // namespace gibbsteel::internal

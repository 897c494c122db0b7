#include "calibrate/published_check.hpp"

#include <cmath>

#include "gibbsteel/measurement_file.hpp"
#include "internal/computed_measurements.hpp"

namespace gibbsteel {
namespace internal {
namespace {

/// Whether a measurement of the fit is this published one.
bool is_fitted_to(const Measurement& published,
                  const std::vector<Measurement>& measurements,
                  const std::vector<MeasurementOutcome>& outcomes) {
  for (std::size_t i = 0; i < measurements.size(); ++i) {
    const Measurement& m = measurements[i];
    if (outcomes[i].weight > 0.0 && m.value == published.value &&
        m.uncertainty == published.uncertainty &&
        m.quantity.name() == published.quantity.name() && same_soak(m, published))
      return true;
  }
  return false;
}

bool met(const Measurement& m, double computed) {
  return std::abs(computed - m.value) <= m.uncertainty;
}

PublishedCheck counted(const std::vector<const Measurement*>& published,
                       const std::vector<ComputedMeasurement>& before,
                       const std::vector<ComputedMeasurement>& after,
                       const CalibrationProblem& problem, const Calibration& result) {
  PublishedCheck check;
  for (std::size_t i = 0; i < published.size(); ++i) {
    const Measurement& m = *published[i];
    if (!before[i].reason.empty() || !after[i].reason.empty()) continue;
    const bool was = met(m, before[i].value), is = met(m, after[i].value);
    const bool fitted = is_fitted_to(m, problem.measurements(), result.measurements);
    ++check.count;
    check.met_before += was;
    check.met_after += is;
    check.fitted_to += fitted;
    check.others_met_before += was && !fitted;
    check.others_met_after += is && !fitted;
  }
  return check;
}

}  // namespace

bool check_published(const CalibrationProblem& problem, const SharedParameters& below,
                     const CalibrationOptions& options, std::size_t& evaluations,
                     Calibration& result) {
  std::vector<const Measurement*> published;
  for (const RecordedMeasurement& recorded : published_measurements())
    published.push_back(&recorded.measurement);
  std::vector<double> values;
  for (const CalibratedNumber& number : result.numbers) values.push_back(number.after);
  std::vector<ComputedMeasurement> computed[2];
  for (const bool after : {false, true}) {
    computed[after] = computed_measurements(
        published, after ? problem.with(values) : below, false, options.threads);
    if (options.progress && !options.progress(++evaluations)) return false;
  }
  result.published = counted(published, computed[0], computed[1], problem, result);
  return true;
}

}  // namespace internal

std::string PublishedCheck::brief() const {
  if (count == 0) return "";
  const auto text = [](std::size_t before, std::size_t after) {
    return std::to_string(before) + " before, " + std::to_string(after) + " after";
  };
  std::string line = "published measurements met: " + text(met_before, met_after) +
                     ", of " + std::to_string(count);
  if (fitted_to == 0) return line;
  if (others() == 0) return line + ", all of them fitted to";
  return line + "; of the " + std::to_string(others()) +
         " not fitted to: " + text(others_met_before, others_met_after);
}

}  // namespace gibbsteel

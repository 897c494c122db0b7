/// Small members of what a calibration returns.

#include <cmath>

#include "gibbsteel/calibrate.hpp"

namespace gibbsteel {
namespace {

bool same(double a, double b) { return a == b || (std::isnan(a) && std::isnan(b)); }

double root_mean_square(const std::vector<MeasurementOutcome>& all, bool held_back,
                        double MeasurementOutcome::*residual) {
  double sum = 0.0;
  int count = 0;
  for (const MeasurementOutcome& m : all) {
    if (m.held_back != held_back || std::isnan(m.*residual)) continue;
    sum += m.*residual * m.*residual;
    ++count;
  }
  return count > 0 ? std::sqrt(sum / count) : Occurrence::kUnknown;
}

}  // namespace

bool same_soak(const Measurement& a, const Measurement& b) {
  const SoakOptions &x = a.soak, &y = b.soak;
  return a.steel == b.steel && a.weight_percent == b.weight_percent &&
         a.temperature == b.temperature && x.graphite == y.graphite &&
         x.phases == y.phases && x.suppressed == y.suppressed && x.basis == y.basis &&
         x.solve == y.solve;
}

std::string_view to_string(Loss loss) noexcept {
  constexpr std::string_view kNames[] = {"squares", "huber", "cauchy"};
  return kNames[static_cast<std::size_t>(loss)];
}

std::string_view to_string(CalibrationStatus status) noexcept {
  constexpr std::string_view kNames[] = {"converged",      "stalled",   "not converged",
                                         "nothing usable", "cancelled", "compared"};
  return kNames[static_cast<std::size_t>(status)];
}

bool MeasurementOutcome::operator==(const MeasurementOutcome& o) const {
  return steel == o.steel && record == o.record && quantity == o.quantity &&
         unit == o.unit && temperature == o.temperature && value == o.value &&
         uncertainty == o.uncertainty && held_back == o.held_back &&
         same(before, o.before) && same(after, o.after) &&
         same(residual_before, o.residual_before) &&
         same(residual_after, o.residual_after) &&
         same(residual_left_out, o.residual_left_out) && weight == o.weight &&
         left_out == o.left_out && reason == o.reason;
}

bool LeftOutSteel::operator==(const LeftOutSteel& o) const {
  return steel == o.steel && count == o.count && same(before, o.before) &&
         same(fitted, o.fitted) && same(predicted, o.predicted) && status == o.status;
}

double Calibration::rms_before(bool held_back) const {
  return root_mean_square(measurements, held_back,
                          &MeasurementOutcome::residual_before);
}

double Calibration::rms_after(bool held_back) const {
  return root_mean_square(measurements, held_back, &MeasurementOutcome::residual_after);
}

}  // namespace gibbsteel

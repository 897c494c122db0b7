#include "tolerance/carbon_at_activity.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

namespace gibbsteel::internal {
namespace {

constexpr double kEnough = 1e-8;  ///< of the logarithm of the activity
constexpr int kQuickSteps = 6;
constexpr int kWidenings = 7;  ///< of the bracket: up to a factor of about 13
constexpr double kSteepest = 4.0, kFlattest = 0.3;  ///< d ln a / d ln C that is tried

class ActivityGap {
 public:
  ActivityGap(const Steel& steel, Temperature t, const SoakOptions& options,
              double activity)
      : steel_(steel), t_(t), options_(options), target_(std::log(activity)) {
    for (const auto& [symbol, percent] : steel.analysis().given)
      if (symbol != "C" && symbol != "Fe") room_for_carbon_ -= percent;
  }

  /// ln a_C at this ln(weight percent C), less the target. After trouble always 0, so
  /// that a root finder stops at once.
  double operator()(double ln_carbon) {
    if (!trouble_.empty()) return 0.0;
    const double carbon = std::exp(ln_carbon);
    if (!(carbon <= room_for_carbon_)) {
      trouble_ = "carbon at equal activity: more than the steel has room for";
      return 0.0;
    }
    const State state =
        steel_.changed({{"C", carbon}}, steel_.name()).soak(t_, options_);
    if (state.usable()) return std::log(state.carbon_activity) - target_;
    trouble_ = "carbon at equal activity: " + state.solve_report.brief();
    return 0.0;
  }

  const std::string& trouble() const noexcept { return trouble_; }

 private:
  const Steel& steel_;
  Temperature t_;
  const SoakOptions& options_;
  double target_;
  double room_for_carbon_ = 100.0;  ///< [weight percent]
  std::string trouble_;
};

/// Secant steps; false when they do not get there.
bool quick(ActivityGap& gap, double& x) {
  double value = gap(x);
  double slope = 1.5;  // usual in austenite with carbide
  for (int step = 0; step < kQuickSteps && std::abs(value) > kEnough; ++step) {
    const double next = x - value / std::clamp(slope, kFlattest, kSteepest);
    const double next_value = gap(next);
    if (next != x) slope = (next_value - value) / (next - x);
    x = next;
    value = next_value;
  }
  return std::abs(value) <= kEnough;
}

/// Brackets, then TOMS 748 (Alefeld, Potra & Shi 1995): for kinks and flat ranges.
bool bracketed(ActivityGap& gap, double& x) {
  double width = 0.02, low = x - width, high = x + width;
  double at_low = gap(low), at_high = gap(high);
  for (int i = 0; i < kWidenings && at_low > 0.0; ++i, width *= 2.0)
    at_low = gap(low -= width);
  for (int i = 0; i < kWidenings && at_high < 0.0; ++i, width *= 2.0)
    at_high = gap(high += width);
  if (at_low > 0.0 || at_high < 0.0) return false;
  std::uintmax_t most = 60;
  const auto [left, right] = boost::math::tools::toms748_solve(
      [&gap](double at) { return gap(at); }, low, high, at_low, at_high,
      boost::math::tools::eps_tolerance<double>(30), most);
  x = 0.5 * (left + right);
  return true;
}

}  // namespace

CarbonFound carbon_at_activity(const Steel& steel, Temperature t,
                               const SoakOptions& options, double activity) {
  ActivityGap gap(steel, t, options, activity);
  const double start = std::log(steel.analysis().given["C"]);
  double x = start;
  bool found = quick(gap, x);
  if (!found && gap.trouble().empty()) found = bracketed(gap, x = start);
  if (!gap.trouble().empty()) return {Occurrence::kUnknown, gap.trouble()};
  if (!found)
    return {Occurrence::kUnknown, "no carbon content gives equal carbon activity"};
  return {std::exp(x), ""};
}

}  // namespace gibbsteel::internal

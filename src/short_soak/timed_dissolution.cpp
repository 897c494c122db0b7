#include "short_soak/timed_dissolution.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "internal/annealed_carbides.hpp"
#include "short_soak/carbon_stage.hpp"
#include "short_soak/soak_time.hpp"
#include "short_soak/timed_soak_text.hpp"

namespace gibbsteel::internal {
namespace {

[[noreturn]] void no_result() {
  refuse_limit("state", "gives no result for the time",
               "change the temperature slightly");
}

}  // namespace

TimedDissolution::TimedDissolution(const State& state, double micrometres,
                                   const ShortSoakLimitOptions& annealed)
    : state_(state),
      radius_(0.5e-6 * micrometres),
      start_(short_soak_start(state, annealed)),
      cementite_(state, start_.steel, start_.shares),
      surface_(cementite_.cementite(), cementite_.composition(), cementite_.austenite(),
               state.temperature),
      stop_(cementite_.share(moles_at_stop(cementite_, state.temperature))) {}

DissolvingSpeed TimedDissolution::speed() const {
  const auto beside = [this](double share) {
    return cementite_.austenite_beside(cementite_.moles_at(share));
  };
  return {[this, beside](double share) {
            const auto y = beside(share);
            return y.empty() ? std::numeric_limits<double>::quiet_NaN()
                             : surface_.speed(y, share);
          },
          [this, beside](double share) {
            const auto y = beside(share);
            return y.empty() ? Dissolving::unknown : surface_.regime(y, share);
          }};
}

std::vector<double> TimedDissolution::shares_from(
    double share, const std::vector<double>& minutes) const {
  std::vector<double> seconds;
  for (const double m : minutes) seconds.push_back(60.0 * m);
  const double radius = radius_ * std::cbrt(share / start());
  auto found = shares_left(speed(), share, radius, seconds);
  for (double& left : found) {
    if (std::isnan(left)) no_result();
    left = std::min(left, stop_);
  }
  return found;
}

std::vector<double> TimedDissolution::shares(const std::vector<double>& minutes) const {
  return shares_from(start(), minutes);
}

std::vector<double> TimedDissolution::shares_without_waiting(
    const std::vector<double>& minutes) const {
  if (!(stop_ > 0.0)) return std::vector<double>(minutes.size(), 0.0);
  return shares_from(stop_, minutes);
}

std::optional<double> TimedDissolution::minutes_to(double share) const {
  if (share >= stop_) return 0.0;
  const auto seconds = seconds_to(speed(), start(), radius_, share);
  if (!seconds) return std::nullopt;
  if (std::isnan(*seconds)) no_result();
  return *seconds / 60.0;
}

double TimedDissolution::end() const {
  return std::min(stop_, shares_left(speed(), start(), radius_, {1e30}).front());
}

NamedValues TimedDissolution::matrix_weight_percent(double share) const {
  return cementite_.matrix_weight_percent(cementite_.moles_at(share));
}

ShortSoak TimedDissolution::balance(double share, double& potential) const {
  potential =
      potential_beside(cementite_, cementite_.moles_at(share), state_.temperature);
  return with_measured_carbide(state_, cementite_.carbide(), start_.balance);
}

NamedValues timed_matrix(const State& state, double minutes,
                         const TimedSoakOptions& options) {
  const TimedDissolution soak(state, options.particle_micrometres, options.annealed);
  const NamedValues matrix = soak.matrix_weight_percent(soak.shares({minutes}).front());
  check_no_ferrite(matrix, state.temperature, soak.annealed().balance.parameters,
                   after(minutes), kLongerOrHotter);
  return matrix;
}

ShortSoak timed_result(const State& state, const TimedDissolution& soak, double share,
                       const SoakTime& time, bool none_hotter) {
  double potential = 0.0;
  ShortSoak found = soak.balance(share, potential);
  check_no_ferrite(found.state.matrix.weight_percent, state.temperature,
                   soak.annealed().balance.parameters, after(time.minutes),
                   kLongerOrHotter);
  describe(found, state, potential,
           timed_soak_kind(
               found, time,
               {share < soak.stop(), beyond_compared(state, found), none_hotter}));
  found.state.soak_time = time;
  found.state.soak_time->annealed_at = soak.annealed().balance.annealed_at;
  return found;
}

State timed_state(const State& state, double minutes, const TimedSoakOptions& options) {
  const TimedDissolution soak(state, options.particle_micrometres, options.annealed);
  const SoakTime time{minutes, options.particle_micrometres};
  return timed_result(state, soak, soak.shares({minutes}).front(), time, false).state;
}

}  // namespace gibbsteel::internal

#include "gibbsteel/timed_soak.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "gibbsteel/errors.hpp"
#include "internal/annealed_carbides.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "short_soak/carbon_stage.hpp"
#include "short_soak/cementite_left.hpp"
#include "short_soak/particle_surface.hpp"
#include "short_soak/short_soak_start.hpp"
#include "short_soak/shrinking_spheres.hpp"
#include "short_soak/soak_time.hpp"

namespace gibbsteel {
namespace {

using internal::CementiteLeft;
using internal::ShortSoakStart;

/// A steel from its annealed condition on, at one temperature.
class TimedSoak {
 public:
  TimedSoak(const State& state, const TimedSoakOptions& options)
      : state_(state),
        options_(options),
        start_(internal::short_soak_start(state, options.annealed)),
        cementite_(state, start_.steel, start_.shares),
        surface_(cementite_.cementite(), cementite_.composition(),
                 cementite_.austenite(), state.temperature),
        stop_(
            cementite_.share(internal::moles_at_stop(cementite_, state.temperature))) {}

  /// Eq. (B7).
  /// @param minutes  rising
  std::vector<double> shares(const std::vector<double>& minutes) {
    const internal::DissolvingSpeed speed = [&](double share) {
      const auto y = cementite_.austenite_beside(cementite_.moles_at(share));
      return y.empty() ? std::numeric_limits<double>::quiet_NaN()
                       : surface_.speed(y, share);
    };
    std::vector<double> seconds;
    for (const double m : minutes) seconds.push_back(60.0 * m);
    const double radius = 0.5e-6 * options_.particle_micrometres;
    auto found = internal::shares_left(speed, cementite_.share(cementite_.most()),
                                       radius, seconds);
    if (std::any_of(found.begin(), found.end(), [](double v) { return std::isnan(v); }))
      internal::refuse_limit("state", "gives no result for the time",
                             "change the temperature slightly");
    for (double& share : found) share = std::min(share, stop_);
    return found;
  }

  /// With the matrix that this share leaves.
  ShortSoak balance(double share) {
    potential_ = internal::potential_beside(cementite_, cementite_.moles_at(share),
                                            state_.temperature);
    return with_measured_carbide(state_, cementite_.carbide(), start_.balance);
  }

  /// @param early, late  matrix at half and at twice the time
  ShortSoak result(double share, double minutes, const ShortSoak& early,
                   const ShortSoak& late) {
    ShortSoak soak = balance(share);
    internal::check_no_ferrite(soak.state, start_.balance.parameters,
                               "take a longer time or a higher temperature");
    internal::describe(soak, state_, potential_, kind(soak, minutes, share < stop_));
    for (MatrixBand& band : soak.bands) {
      const double other[2]{early.band(band.element).value,
                            late.band(band.element).value};
      band.other_composition = band.value;
      band.low = std::min({band.value, other[0], other[1]});
      band.high = std::max({band.value, other[0], other[1]});
    }
    return soak;
  }

 private:
  /// @param metals_moved  further than carbon alone gets
  internal::ShortSoakKind kind(const ShortSoak& soak, double minutes,
                               bool metals_moved) const {
    const std::string time = internal::minutes_text(minutes);
    const std::string stage =
        metals_moved ? "M3C has given up what metals diffusing away from it allow"
                     : "M3C has given up what carbon it can with its metals left in "
                       "place; by then metals have not got further (short-soak limit)";
    return {
        SolveStatus::timed_soak,
        "M3C left after " + time + ", matrix by mass balance, no equilibrium",
        {std::string(codes::kTimedSoak),
         "An estimate of a soak of " + time +
             ", whole section at temperature, not an equilibrium: " + stage +
             ". Spheres of " + internal::significant(options_.particle_micrometres, 2) +
             " micrometre, annealed at " + internal::degrees(soak.annealed_at) +
             ". Time goes with the square of the diameter; size and diffusion are "
             "not known better than the band, half to twice the time."}};
  }

  const State& state_;
  const TimedSoakOptions& options_;
  ShortSoakStart start_;
  CementiteLeft cementite_;
  internal::ParticleSurface surface_;
  double stop_;  ///< share at the end of the stage of carbon, Eq. (B3)
  double potential_ = 0.0;
};

}  // namespace

std::vector<ShortSoak> timed_soaks(const State& state,
                                   const std::vector<double>& minutes,
                                   const TimedSoakOptions& options) {
  internal::check_soak_time(minutes, options.particle_micrometres);
  if (minutes.empty()) return {};
  TimedSoak soak(state, options);
  std::vector<double> times;
  for (const double m : minutes) times.insert(times.end(), {0.5 * m, m, 2.0 * m});
  std::sort(times.begin(), times.end());
  const auto shares = soak.shares(times);
  const auto share_at = [&](double m) {
    const auto found = std::lower_bound(times.begin(), times.end(), m);
    return shares[static_cast<std::size_t>(found - times.begin())];
  };
  std::vector<ShortSoak> results;
  for (const double m : minutes)
    results.push_back(soak.result(share_at(m), m, soak.balance(share_at(0.5 * m)),
                                  soak.balance(share_at(2.0 * m))));
  return results;
}

ShortSoak timed_soak(const State& state, double minutes,
                     const TimedSoakOptions& options) {
  return timed_soaks(state, {minutes}, options).front();
}

}  // namespace gibbsteel

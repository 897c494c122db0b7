#include "gibbsteel/timed_soak.hpp"

#include <algorithm>
#include <initializer_list>
#include <memory>

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "short_soak/soak_time.hpp"
#include "short_soak/timed_dissolution.hpp"
#include "short_soak/timed_soak_text.hpp"

namespace gibbsteel {
namespace {

using internal::TimedDissolution;

/// The first that can be of steel annealed so much hotter [C].
/// @throws InputError as short_soak_limit(), of the last
std::unique_ptr<TimedDissolution> beside(const State& state,
                                         const TimedSoakOptions& options,
                                         Temperature annealed,
                                         std::initializer_list<double> hotter) {
  ShortSoakLimitOptions moved = options.annealed;
  for (const double by : hotter) {
    moved.annealed_at = Temperature::kelvin(annealed.in_kelvin() + by);
    try {
      return std::make_unique<TimedDissolution>(state, options.particle_micrometres,
                                                moved);
    } catch (const InputError&) {
      if (by == 0.0) throw;
    }
  }
  return nullptr;
}

/// Share of cementite at each of the times, a factor longer.
std::vector<double> shares_after(const TimedDissolution& soak,
                                 const std::vector<double>& minutes,
                                 double factor = 1.0) {
  std::vector<double> rising;
  for (const double m : minutes) rising.push_back(factor * m);
  std::sort(rising.begin(), rising.end());
  const auto shares = soak.shares(rising);
  std::vector<double> found;
  for (const double m : minutes) {
    const auto at = std::lower_bound(rising.begin(), rising.end(), factor * m);
    found.push_back(shares[static_cast<std::size_t>(at - rising.begin())]);
  }
  return found;
}

void set_bands(ShortSoak& soak, const NamedValues& early, const NamedValues& late) {
  for (MatrixBand& band : soak.bands) {
    const double value = band.value;
    const double low = early[band.element], high = late[band.element];
    band.other_composition = value;
    band.low = std::min({value, low, high});
    band.high = std::max({value, low, high});
  }
}

ShortSoak result(const State& state, const TimedDissolution& soak, double share,
                 const SoakTime& time) {
  double potential = 0.0;
  ShortSoak found = soak.balance(share, potential);
  internal::check_no_ferrite(found.state.matrix.weight_percent, state.temperature,
                             soak.annealed().balance.parameters,
                             internal::after(time.minutes), internal::kLongerOrHotter);
  internal::describe(found, state, potential,
                     internal::timed_soak_kind(found, time, share < soak.stop()));
  found.state.soak_time = time;
  return found;
}

}  // namespace

std::vector<ShortSoak> timed_soaks(const State& state,
                                   const std::vector<double>& minutes,
                                   const TimedSoakOptions& options) {
  internal::check_soak_time(minutes, options.particle_micrometres);
  if (minutes.empty()) return {};
  const TimedDissolution soak(state, options.particle_micrometres, options.annealed);
  const Temperature annealed = soak.annealed().balance.annealed_at;
  const auto colder = beside(state, options, annealed, {-50.0, -25.0, 0.0});
  const auto hotter = beside(state, options, annealed, {30.0, 20.0, 10.0, 0.0});
  const auto early = shares_after(*colder, minutes, 1.0 / internal::kTimeFactor);
  const auto late = shares_after(*hotter, minutes, internal::kTimeFactor);
  const auto shares = shares_after(soak, minutes);
  std::vector<ShortSoak> results;
  for (std::size_t i = 0; i < minutes.size(); ++i) {
    results.push_back(result(
        state, soak, shares[i],
        {minutes[i], options.particle_micrometres, options.annealed.annealed_at}));
    set_bands(results.back(), colder->matrix_weight_percent(early[i]),
              hotter->matrix_weight_percent(late[i]));
  }
  return results;
}

ShortSoak timed_soak(const State& state, double minutes,
                     const TimedSoakOptions& options) {
  return timed_soaks(state, {minutes}, options).front();
}

}  // namespace gibbsteel

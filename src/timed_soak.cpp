#include "gibbsteel/timed_soak.hpp"

#include <algorithm>
#include <memory>

#include "gibbsteel/errors.hpp"
#include "internal/annealed_carbides.hpp"
#include "short_soak/below_a1.hpp"
#include "short_soak/soak_time.hpp"
#include "short_soak/timed_dissolution.hpp"

namespace gibbsteel {
namespace {

using internal::TimedDissolution;
using SharesOfTimes =
    std::vector<double> (TimedDissolution::*)(const std::vector<double>&) const;

/// The first that can be of steel annealed at one of these.
/// @throws InputError as short_soak_limit(), of the last
std::unique_ptr<TimedDissolution> first_of(const State& state,
                                           const TimedSoakOptions& options,
                                           const std::vector<Temperature>& annealed) {
  ShortSoakLimitOptions moved = options.annealed;
  for (const Temperature& at : annealed) {
    moved.annealed_at = at;
    try {
      return std::make_unique<TimedDissolution>(state, options.particle_micrometres,
                                                moved);
    } catch (const InputError&) {
      if (&at == &annealed.back()) throw;
    }
  }
  return nullptr;
}

/// The same soak of steel annealed otherwise, for the ends of the band.
struct Beside {
  std::unique_ptr<TimedDissolution> colder, hotter;
  bool none_hotter = false;  ///< nothing hotter could be taken
};

Beside beside(const State& state, const TimedSoakOptions& options,
              const internal::ShortSoakStart& start) {
  const double annealed = start.balance.annealed_at.in_kelvin();
  const double coldest = Temperature::celsius(internal::kColdestAnnealing).in_kelvin();
  const double hottest =
      internal::hottest_without_austenite(start.steel, start.balance.annealed_at,
                                          Temperature::kelvin(annealed + 30.0),
                                          start.balance.annealing)
          .in_kelvin();
  std::vector<Temperature> down, up;
  for (const double by : {50.0, 25.0, 0.0})
    down.push_back(
        Temperature::kelvin(by > 0.0 ? std::max(annealed - by, coldest) : annealed));
  for (const double by : {30.0, 20.0, 10.0, 0.0})
    up.push_back(Temperature::kelvin(std::min(annealed + by, hottest)));
  Beside found{first_of(state, options, down), first_of(state, options, up)};
  constexpr double kNothing = 0.5;
  found.none_hotter =
      found.hotter->annealed().balance.annealed_at.in_kelvin() < annealed + kNothing;
  return found;
}

/// Share of cementite at each of the times, a factor longer.
/// @param from  by which share of times that rise is asked for
std::vector<double> shares_after(const TimedDissolution& soak,
                                 const std::vector<double>& minutes,
                                 double factor = 1.0,
                                 SharesOfTimes from = &TimedDissolution::shares) {
  std::vector<double> rising;
  for (const double m : minutes) rising.push_back(factor * m);
  std::sort(rising.begin(), rising.end());
  const auto shares = (soak.*from)(rising);
  std::vector<double> found;
  for (const double m : minutes) {
    const auto at = std::lower_bound(rising.begin(), rising.end(), factor * m);
    found.push_back(shares[static_cast<std::size_t>(at - rising.begin())]);
  }
  return found;
}

/// The least that may be left: after three times the minutes, or after the minutes
/// when the first stage was over at once.
std::vector<double> latest_shares(const TimedDissolution& soak,
                                  const std::vector<double>& minutes) {
  auto least = shares_after(soak, minutes, internal::kTimeFactor);
  const auto sooner =
      shares_after(soak, minutes, 1.0, &TimedDissolution::shares_without_waiting);
  for (std::size_t i = 0; i < least.size(); ++i)
    least[i] = std::min(least[i], sooner[i]);
  return least;
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

}  // namespace

std::vector<ShortSoak> timed_soaks(const State& state,
                                   const std::vector<double>& minutes,
                                   const TimedSoakOptions& options) {
  internal::check_soak_time(minutes, options.particle_micrometres);
  if (minutes.empty()) return {};
  const TimedDissolution soak(state, options.particle_micrometres, options.annealed);
  const Beside other = beside(state, options, soak.annealed());
  const auto early = shares_after(*other.colder, minutes, 1.0 / internal::kTimeFactor);
  const auto late = latest_shares(*other.hotter, minutes);
  const auto shares = shares_after(soak, minutes);
  std::vector<ShortSoak> results;
  for (std::size_t i = 0; i < minutes.size(); ++i) {
    results.push_back(internal::timed_result(state, soak, shares[i],
                                             {minutes[i], options.particle_micrometres},
                                             other.none_hotter));
    set_bands(results.back(), other.colder->matrix_weight_percent(early[i]),
              other.hotter->matrix_weight_percent(late[i]));
  }
  return results;
}

ShortSoak timed_soak(const State& state, double minutes,
                     const TimedSoakOptions& options) {
  return timed_soaks(state, {minutes}, options).front();
}

}  // namespace gibbsteel

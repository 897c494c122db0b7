#include "internal/small_step.hpp"

#include <algorithm>
#include <cmath>

double gibbsteel::internal::small_step(const State& state, const StateSlope& slope,
                                       double relative) {
  double fastest = slope.input.kind == Input::Kind::temperature
                       ? 1.0 / state.temperature.in_kelvin()
                       : 0.0;
  const auto look_at = [&](double value, double change) {
    const double share = std::abs(change / value);
    if (std::isfinite(share)) fastest = std::max(fastest, share);
  };
  look_at(state.density, slope.density);
  look_at(state.carbon_activity, slope.carbon_activity);
  for (std::size_t k = 0; k < state.occurrences.size(); ++k) {
    const Occurrence &o = state.occurrences[k], &d = slope.occurrences[k];
    look_at(o.mole_percent, d.mole_percent);
    look_at(o.volume_percent, d.volume_percent);
    look_at(o.molar_volume, d.molar_volume);
    for (const auto& [symbol, percent] : o.weight_percent)
      look_at(percent, d.weight_percent[symbol]);
  }
  return fastest > 0.0 ? relative / fastest : 0.0;
}

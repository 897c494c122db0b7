#include "short_soak/below_a1.hpp"

#include <algorithm>

namespace gibbsteel::internal {
namespace {

/// [J/mol] How far austenite is from forming: below 0 without it, else 0. What gives no
/// result counts as too hot.
double driving_force(const Steel& steel, double kelvin, const SoakOptions& options) {
  const State state = steel.soak(Temperature::kelvin(kelvin), options);
  if (!state.usable() || holds_austenite(state)) return 0.0;
  return std::min(state.driving_force["austenite"], -1e-12);
}

struct Point {
  double kelvin, force;
};

/// Where the line through both reaches 0; halfway to `hot` where that is no step.
double next_guess(const Point& before, const Point& last, double hot) {
  const double slope = (last.force - before.force) / (last.kelvin - before.kelvin);
  const double guess = last.kelvin - last.force / slope;
  return guess > last.kelvin && guess < hot ? guess : 0.5 * (last.kelvin + hot);
}

}  // namespace

bool holds_austenite(const State& state) {
  return state.volume_percent_of("austenite") > 0.0;
}

Temperature hottest_without_austenite(const Steel& steel, Temperature low,
                                      Temperature high, const SoakOptions& options) {
  constexpr double kClose = 1e-6;  // [K]
  const auto at = [&](double kelvin) {
    return Point{kelvin, driving_force(steel, kelvin, options)};
  };
  if (at(high.in_kelvin()).force < 0.0) return high;
  Point before = at(low.in_kelvin());
  if (before.force == 0.0) return low;
  // The force is nearly straight: secants from below, between it and what is too hot.
  double hot = high.in_kelvin();
  Point last = before;
  while (hot - last.kelvin > kClose) {
    const double guess = last.kelvin == before.kelvin ? 0.5 * (last.kelvin + hot)
                                                      : next_guess(before, last, hot);
    const bool arrived = guess - last.kelvin < kClose;
    const Point next = at(guess);
    if (next.force < 0.0) {
      before = last;
      last = next;
      if (arrived) break;
    } else {
      hot = guess;
    }
  }
  return Temperature::kelvin(last.kelvin);
}

}  // namespace gibbsteel::internal

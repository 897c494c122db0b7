#include "short_soak/carbon_stage.hpp"

#include <boost/math/tools/roots.hpp>
#include <cstdint>

#include "internal/cementite_stop.hpp"

namespace gibbsteel::internal {

double potential_beside(CementiteLeft& cementite, double moles, Temperature t) {
  constexpr double kVeryLow = -1e9;
  const auto y = cementite.austenite_beside(moles);
  return y.empty() ? kVeryLow : carbon_potential(cementite.austenite(), t, y);
}

double moles_at_stop(CementiteLeft& cementite, Temperature t) {
  const double most = cementite.most();
  const auto stop = cementite_stop(cementite.cementite(), cementite.composition(),
                                   cementite.austenite(), t);
  const auto excess = [&](double moles) {
    return potential_beside(cementite, moles, t) - *stop;
  };
  if (!stop || excess(0.0) <= 0.0) return 0.0;
  if (excess(most) >= 0.0) return most;
  std::uintmax_t steps = 200;
  const auto [low, high] = boost::math::tools::bisect(
      excess, 0.0, most, boost::math::tools::eps_tolerance<double>(46), steps);
  return 0.5 * (low + high);
}

}  // namespace gibbsteel::internal

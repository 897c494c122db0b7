#include "gibbsteel/short_soak_limit.hpp"

#include <algorithm>

#include "internal/annealed_carbides.hpp"
#include "internal/error_codes.hpp"
#include "internal/result_text.hpp"
#include "short_soak/carbon_stage.hpp"
#include "short_soak/cementite_left.hpp"
#include "short_soak/short_soak_start.hpp"

namespace gibbsteel {
namespace {

std::string text_of(const ShortSoak& soak) {
  const std::string carbon =
      soak.state.volume_percent_of(internal::kCementite) > 0.0
          ? "what carbon it can with its metals left in place"
          : "all of its carbon, though its metals were left in place";
  return "A short-soak limit, not an equilibrium: M3C has given up " + carbon +
         "; other carbide is as annealed at " + internal::degrees(soak.annealed_at) +
         ". As a rule a soak of minutes lies between this and the long-hold limit, "
         "nearer to the latter the hotter and longer it is: timed_soak takes the "
         "minutes.";
}

/// Bands run from this limit to the long hold.
void set_bands(ShortSoak& soak) {
  for (MatrixBand& band : soak.bands) {
    band.other_composition = band.value;
    band.low = std::min(band.value, band.long_hold);
    band.high = std::max(band.value, band.long_hold);
  }
}

}  // namespace

ShortSoak short_soak_limit(const State& state, const ShortSoakLimitOptions& options) {
  const auto start = internal::short_soak_start(state, options);
  internal::CementiteLeft cementite(state, start.steel, start.shares);
  const double moles = internal::moles_at_stop(cementite, state.temperature);
  const double potential =
      internal::potential_beside(cementite, moles, state.temperature);
  ShortSoak soak = with_measured_carbide(state, cementite.carbide(), start.balance);
  internal::check_no_ferrite(soak.state.matrix.weight_percent, state.temperature,
                             start.balance.parameters, "state",
                             "take a higher temperature");
  internal::describe(
      soak, state, potential,
      {SolveStatus::short_soak_limit,
       "M3C by the short-soak limit, matrix by mass balance, no equilibrium",
       {std::string(codes::kShortSoakLimit), text_of(soak)}});
  soak.state.soak_time = SoakTime{0.0, 0.0, soak.annealed_at};
  set_bands(soak);
  return soak;
}

}  // namespace gibbsteel

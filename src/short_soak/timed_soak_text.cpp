#include "short_soak/timed_soak_text.hpp"

#include "internal/annealed_carbides.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "short_soak/soak_time.hpp"

namespace gibbsteel::internal {
namespace {

std::string stage(const ShortSoak& soak, bool metals_moved) {
  if (!(soak.state.volume_percent_of(kCementite) > 0.0)) return "all M3C has dissolved";
  return metals_moved
             ? "M3C has given up what metals diffusing away from it allow"
             : "M3C has given up what carbon it can with its metals left in place, and "
               "these have not got further by then (short-soak limit)";
}

/// Kinds that stay as annealed: " (MC, hexagonal MC)".
std::string other_kinds(const ShortSoak& soak) {
  std::string names;
  for (const CarbideInBalance& carbide : soak.carbides)
    if (carbide.kind != kCementite) names += (names.empty() ? "" : ", ") + carbide.kind;
  return names;
}

std::string text_of(const ShortSoak& soak, const SoakTime& time, bool metals_moved) {
  constexpr double kHeatingThrough = 3.0;
  std::string text = "An estimate of a soak of " + minutes_text(time.minutes) +
                     ", whole section at temperature, not an equilibrium: " +
                     stage(soak, metals_moved) + ". Spheroidized stock, M3C of " +
                     significant(time.particle_micrometres, 2) +
                     " micrometre annealed at " + degrees(soak.annealed_at) +
                     "; pearlite and hardened stock dissolve sooner.";
  const std::string others = other_kinds(soak);
  if (!others.empty()) text += " Other carbide (" + others + ") is kept as annealed.";
  if (time.minutes < kHeatingThrough)
    text += " So short a time is about heating through.";
  return text +
         " Size and diffusion are known to a factor of three in time: see the band of "
         "the ShortSoak.";
}

}  // namespace

ShortSoakKind timed_soak_kind(const ShortSoak& soak, const SoakTime& time,
                              bool metals_moved) {
  return {SolveStatus::timed_soak,
          "M3C left after " + minutes_text(time.minutes) +
              ", matrix by mass balance, no equilibrium",
          {std::string(codes::kTimedSoak), text_of(soak, time, metals_moved)}};
}

}  // namespace gibbsteel::internal

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

std::string text_of(const ShortSoak& soak, const SoakTime& time,
                    const TimedSoakFacts& facts) {
  constexpr double kHeatingThrough = 3.0;
  std::string text = "An estimate of a soak of " + minutes_text(time.minutes) +
                     ", whole section at temperature, not an equilibrium: " +
                     stage(soak, facts.metals_moved) + ". Spheroidized stock, M3C of " +
                     significant(time.particle_micrometres, 2) +
                     " micrometre annealed at " + degrees(soak.annealed_at) +
                     "; pearlite and hardened stock dissolve sooner.";
  const std::string others = other_kinds(soak);
  if (!others.empty()) text += " Other carbide (" + others + ") is kept as annealed.";
  if (!facts.beyond.empty())
    text +=
        " Beyond the steels it was compared with, bearing and oil-hardening ones: " +
        facts.beyond + ".";
  if (time.minutes < kHeatingThrough)
    text += " So short a time is about heating through.";
  text += " Size and diffusion are known to a factor of three in time: see the band of "
          "the ShortSoak.";
  if (facts.none_hotter)
    text += " No hotter annealing could be taken for its upper end.";
  return text;
}

/// Most chromium of annealed cementite for which the estimate is taken as compared; own
/// judgement, that of 52100 holds 9 [wt%].
constexpr double kMostChromium = 12.0;

bool is_usual(const std::string& kind) {
  return kind == kCementite || kind == "MC" || kind == "hexagonal MC";
}

}  // namespace

std::string beyond_compared(const State& long_hold, const ShortSoak& soak) {
  for (const CarbideInBalance& carbide : soak.carbides)
    if (carbide.kind == kCementite && carbide.weight_percent["Cr"] > kMostChromium)
      return "annealed M3C with " + fixed(carbide.weight_percent["Cr"], 0) + " wt% Cr";
  for (const Occurrence& o : long_hold.occurrences)
    if (o.role == Role::carbide && !is_usual(o.kind))
      return o.kind + " in the long-hold limit";
  return "";
}

ShortSoakKind timed_soak_kind(const ShortSoak& soak, const SoakTime& time,
                              const TimedSoakFacts& facts) {
  return {SolveStatus::timed_soak,
          "M3C left after " + minutes_text(time.minutes) +
              ", matrix by mass balance, no equilibrium",
          {std::string(codes::kTimedSoak), text_of(soak, time, facts)}};
}

}  // namespace gibbsteel::internal

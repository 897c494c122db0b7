#include "internal/annealed_carbides.hpp"

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "short_soak/below_a1.hpp"

namespace gibbsteel::internal {
namespace {

/// Of the carbon of the steel, in annealed carbide other than cementite.
constexpr double kMostElsewhere = 0.1;
/// Annealing temperature where none is given, and how far below A1 it is at least [C].
constexpr double kAnnealed = 700.0, kBelowA1 = 10.0;

const char* const kInstead =
    "take the long-hold limit, or count the carbide and use with_measured_carbide";

/// Common practice, no source.
const char* const kLessInPractice =
    "take the long-hold limit (after minutes less carbon is in the matrix in "
    "practice), or count the carbide and use with_measured_carbide";

const char* const kWhatFor =
    "are for steels whose annealed carbide is cementite (52100, O1, W1 types): ";

/// Common practice, no source: WC comes with long heating, which spoils such steels.
const char* const kSuppress =
    "soak with suppressed=\"hexagonal MC\", which commercial stock hardly holds, or ";

const char* const kNotFree = "carbide that gives up carbon only with its metals: ";

/// Other kinds than cementite, in a row.
std::string other_kinds(const std::vector<CarbideShare>& shares) {
  std::string names;
  for (const CarbideShare& share : shares)
    if (!is_cementite(share))
      names += (names.empty() ? "" : ", ") + share.occurrences.front().kind;
  return names;
}

bool is_hexagonal(const CarbideShare& share) {
  return share.occurrences.front().kind == "hexagonal MC";
}

/// [wt% of the steel]
double carbon_in(const CarbideShare& share) {
  double held = 0.0;
  for (const Occurrence& o : share.occurrences)
    held += 0.01 * o.mass_percent * o.weight_percent["C"];
  return held;
}

[[noreturn]] void refuse_other_carbide(const State& annealed, const std::string& what,
                                       bool by_hexagonal) {
  refuse_limit(
      "short and timed soaks",
      kWhatFor + ("annealing at " + degrees(annealed.temperature)) + " " + what,
      (by_hexagonal ? kSuppress : "") + std::string(kLessInPractice));
}

void check_other_carbide(const State& annealed,
                         const std::vector<CarbideShare>& shares) {
  double held = 0.0, in_hexagonal = 0.0;
  for (const CarbideShare& share : shares) {
    if (is_cementite(share)) continue;
    const double carbon = carbon_in(share);
    held += carbon;
    if (is_hexagonal(share)) in_hexagonal += carbon;
  }
  const double carbon = annealed.analysis.modelled["C"];
  if (held <= kMostElsewhere * carbon) return;
  const bool by_hexagonal = held - in_hexagonal <= kMostElsewhere * carbon;
  refuse_other_carbide(annealed,
                       "leaves " + fixed(held, 2) + " of " + fixed(carbon, 2) +
                           " wt% carbon, more than a tenth, in " + kNotFree +
                           other_kinds(shares),
                       by_hexagonal);
}

[[noreturn]] void refuse_austenite(const State& annealed, const std::string& place) {
  const double austenite = annealed.volume_percent_of("austenite");
  const std::string what =
      "is above A1: " + fixed(austenite, austenite < 10.0 ? 1 : 0) + " vol% austenite";
  if (annealed.temperature.in_celsius() <= kColdestAnnealing + 1e-6)
    refuse_limit(place, what + ", and the parameter file ends there: no estimate",
                 kInstead);
  refuse_limit(place, what,
               "give where the slow cool stops changing the cementite, below A1, not "
               "the furnace setting");
}

}  // namespace

void refuse_limit(const std::string& place, const std::string& what,
                  const std::string& remedy) {
  throw InputError({{std::string(codes::kNoShortSoakLimit), place, what, remedy}});
}

State annealed_state(const Steel& steel, const std::optional<Temperature>& asked_for,
                     const SoakOptions& options) {
  if (asked_for) return steel.soak(*asked_for, options);
  const Temperature usual = Temperature::celsius(kAnnealed);
  const Temperature coldest = Temperature::celsius(kColdestAnnealing);
  const Temperature safe = Temperature::celsius(kAnnealed + kBelowA1);
  if (!holds_austenite(steel.soak(safe, options))) return steel.soak(usual, options);
  State cold = steel.soak(coldest, options);
  if (!cold.usable() || holds_austenite(cold)) return cold;
  const Temperature a1 = hottest_without_austenite(steel, coldest, safe, options);
  const double kelvin = std::max(a1.in_kelvin() - kBelowA1, coldest.in_kelvin());
  return steel.soak(Temperature::kelvin(kelvin), options);
}

std::vector<CarbideShare> annealed_carbides(const State& annealed) {
  std::vector<CarbideShare> found;
  for (const Occurrence& o : annealed.occurrences) {
    if (o.role == Role::matrix) continue;
    const auto same =
        std::find_if(found.begin(), found.end(), [&](const CarbideShare& share) {
          return share.occurrences.front().kind == o.kind;
        });
    CarbideShare& share = same == found.end() ? found.emplace_back() : *same;
    share.occurrences.push_back(o);
    share.volume_percent = annealed.volume_percent_of(o.kind);
  }
  return found;
}

bool is_cementite(const CarbideShare& share) {
  return share.occurrences.front().kind == kCementite;
}

void check_annealed(const State& annealed, const std::vector<CarbideShare>& shares) {
  const std::string place = "annealing at " + degrees(annealed.temperature);
  const Temperature coldest = Temperature::celsius(kColdestAnnealing);
  if (!annealed.usable())
    refuse_limit(place, "has no usable result",
                 "change the annealing temperature slightly");
  for (const Warning& warning : annealed.warnings)
    if (warning.code == "gibbsteel.warning.301")
      refuse_limit(place, "is outside the validity of the parameter file",
                   "give a temperature from " + degrees(coldest) +
                       " to A1; where A1 is lower there is no estimate");
  if (holds_austenite(annealed)) refuse_austenite(annealed, place);
  if (shares.empty()) refuse_limit(place, "leaves no carbide", kInstead);
  if (std::none_of(shares.begin(), shares.end(), is_cementite))
    refuse_other_carbide(annealed,
                         "leaves no M3C, but " + (kNotFree + other_kinds(shares)),
                         std::any_of(shares.begin(), shares.end(), is_hexagonal));
  for (const CarbideShare& share : shares)
    if (is_cementite(share) && share.occurrences.size() > 1)
      refuse_limit(place, "holds M3C of two compositions", kInstead);
  check_other_carbide(annealed, shares);
}

}  // namespace gibbsteel::internal

#include "internal/annealed_carbides.hpp"

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"

namespace gibbsteel::internal {
namespace {

/// Of the carbon of the steel, in annealed carbide other than cementite.
constexpr double kMostElsewhere = 0.1;
/// Annealing temperatures that are tried where none is given [C].
constexpr double kAnnealed = 700.0, kColder = 25.0, kColdest = 600.0;

const char* const kInstead =
    "take the long-hold limit, or count the carbide and use with_measured_carbide";

const char* const kNotFree = "carbide that gives up carbon only with its metals: ";

/// Other kinds than cementite, in a row.
std::string other_kinds(const std::vector<CarbideShare>& shares) {
  std::string names;
  for (const CarbideShare& share : shares)
    if (!is_cementite(share))
      names += (names.empty() ? "" : ", ") + share.occurrences.front().kind;
  return names;
}

void check_other_carbide(const State& annealed,
                         const std::vector<CarbideShare>& shares) {
  double held = 0.0;
  for (const CarbideShare& share : shares)
    if (!is_cementite(share))
      for (const Occurrence& o : share.occurrences)
        held += 0.01 * o.mass_percent * o.weight_percent["C"];
  const double carbon = annealed.analysis.modelled["C"];
  if (held <= kMostElsewhere * carbon) return;
  refuse_limit("annealing at " + degrees(annealed.temperature),
               "leaves " + fixed(held, 2) + " of " + fixed(carbon, 2) +
                   " wt% carbon, more than a tenth, in " + kNotFree +
                   other_kinds(shares),
               kInstead);
}

}  // namespace

void refuse_limit(const std::string& place, const std::string& what,
                  const std::string& remedy) {
  throw InputError({{std::string(codes::kNoShortSoakLimit), place, what, remedy}});
}

State annealed_state(const Steel& steel, const std::optional<Temperature>& asked_for,
                     const SoakOptions& options) {
  if (asked_for) return steel.soak(*asked_for, options);
  State annealed;
  for (double celsius = kAnnealed; celsius >= kColdest; celsius -= kColder) {
    annealed = steel.soak(Temperature::celsius(celsius), options);
    if (!annealed.usable() || annealed.volume_percent_of("austenite") == 0.0) break;
  }
  return annealed;
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
  if (!annealed.usable())
    refuse_limit(place, "has no usable result",
                 "change the annealing temperature slightly");
  for (const Warning& warning : annealed.warnings)
    if (warning.code == "gibbsteel.warning.301")
      refuse_limit(place, "is outside the validity of the parameter file",
                   "give a temperature from " +
                       degrees(Temperature::celsius(kColdest)) + " to A1");
  const double austenite = annealed.volume_percent_of("austenite");
  if (austenite > 0.0)
    refuse_limit(place,
                 "is above A1: " + fixed(austenite, austenite < 10.0 ? 1 : 0) +
                     " vol% austenite",
                 "give where the slow cool stops changing the cementite, below A1, "
                 "not the furnace setting");
  if (std::none_of(shares.begin(), shares.end(), is_cementite))
    refuse_limit(place,
                 shares.empty()
                     ? "leaves no carbide"
                     : "leaves no M3C, but " + (kNotFree + other_kinds(shares)),
                 kInstead);
  for (const CarbideShare& share : shares)
    if (is_cementite(share) && share.occurrences.size() > 1)
      refuse_limit(place, "holds M3C of two compositions", kInstead);
  check_other_carbide(annealed, shares);
}

}  // namespace gibbsteel::internal

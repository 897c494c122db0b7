#include <algorithm>
#include <cmath>
#include <string>
#include <unordered_set>
#include <utility>

#include "../internal/error_codes.hpp"
#include "checks.hpp"
#include "message_text.hpp"
#include "number_text.hpp"
#include "term_key.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr int kHighestBinaryOrder = 5;   // Redlich-Kister, two mixing constituents
constexpr int kHighestTernaryOrder = 2;  // Muggianu's convention, three of them
constexpr std::size_t kMostMixingSublattices = 2;

struct Mixing {
  std::size_t sublattices = 0;   // on which something mixes
  std::size_t constituents = 0;  // the most on one of them
};

Mixing mixing_of(const Term& term) {
  Mixing mixing;
  for (const auto& names : term.on) {
    if (names.size() < 2) continue;
    ++mixing.sublattices;
    mixing.constituents = std::max(mixing.constituents, names.size());
  }
  return mixing;
}

void check_order_range(const Check& check, const Mixing& mixing, int order,
                       const std::string& place) {
  const bool reciprocal = mixing.sublattices == 2;
  const bool ternary = mixing.constituents == 3;
  const int highest = reciprocal ? 0
                      : ternary  ? kHighestTernaryOrder
                                 : kHighestBinaryOrder;
  if (order >= 0 && order <= highest) return;
  const std::string kind = reciprocal ? "a term that mixes on two sublattices"
                           : ternary  ? "three mixing constituents"
                                      : "two mixing constituents";
  check.problems.add(
      codes::kOrderRange, place + "/order",
      "is " + std::to_string(order) + " for " + kind,
      highest == 0 ? std::string("give 0") : "give 0 to " + std::to_string(highest));
}

bool check_order(const Check& check, const Placed<Term>& placed) {
  const std::size_t before = check.problems.count();
  const Mixing mixing = mixing_of(placed.value);
  const std::optional<int>& order = placed.value.order;
  if (mixing.sublattices > kMostMixingSublattices) {
    check.problems.add(
        codes::kTooManyMixes, placed.place + "/on",
        "constituents mix on " + std::to_string(mixing.sublattices) + " sublattices",
        "let them mix on one or two");
  } else if (mixing.sublattices == 2 && mixing.constituents > 2) {
    check.problems.add(codes::kTooManyMixes, placed.place + "/on",
                       "three constituents mix while others mix on a second sublattice",
                       "let two mix on each of the two sublattices");
  } else if (mixing.sublattices > 0 && !order) {
    check.problems.add(codes::kOrderPresence, placed.place,
                       "constituents mix but \"order\" is missing",
                       "add it; 0 is the plain interaction");
  } else if (mixing.sublattices == 0 && order) {
    check.problems.add(codes::kOrderPresence, placed.place + "/order",
                       "nothing mixes in this term",
                       "leave the order out, or list two constituents that mix");
  } else if (order) {
    check_order_range(check, mixing, *order, placed.place);
  }
  return check.problems.count() == before;
}

/// Checks one list; returns whether all of its terms are in order.
bool check_list(const Check& check, const Phase& phase,
                const std::vector<Placed<Term>>& list) {
  const std::size_t before = check.problems.count();
  bool sound = true;
  std::unordered_set<std::string> seen;
  for (const Placed<Term>& placed : list) {
    if (check.problems.full()) return false;
    sound = sound && placed.sound;
    if (!placed.sound) continue;
    const bool fits = check_on(check, phase, placed.value.on, placed.place + "/on");
    if (!fits || !check_order(check, placed)) continue;
    check_expression(check, placed.value.value, placed.place);
    if (seen.insert(term_key(placed.value)).second) continue;
    check.problems.add(
        codes::kTermTwice, placed.place,
        "the term on " + on_text(placed.value.on) +
            (placed.value.order ? " of order " + std::to_string(*placed.value.order)
                                : std::string()) +
            " is given twice",
        "keep one of the two");
  }
  return sound && check.problems.count() == before;
}

/// Curie temperatures and moments: constants only, of a size that makes sense.
void check_constant(const Check& check, const std::vector<Placed<Term>>& list,
                    double largest) {
  for (const auto& [term, place, sound] : list) {
    if (!sound) continue;
    const auto& powers = term.value.terms;
    const bool constant =
        term.value.curves.empty() &&
        std::all_of(powers.begin(), powers.end(), [](const TemperatureTerm& power) {
          return power.power == TemperaturePower{};
        });
    if (!constant) {
      check.problems.add(codes::kNotConstant, place, "this depends on temperature",
                         "give \"terms\": {\"1\": ...} and nothing else");
    } else if (std::abs(powers.front().coefficient) > largest) {
      check.problems.add(codes::kOutOfRange, place + "/terms/1",
                         "is " + number_text(powers.front().coefficient),
                         "give a number from " + number_text(-largest) + " to " +
                             number_text(largest));
    }
  }
}

}  // namespace

void check_terms(const Check& check, const DraftPhase& draft, const Phase& phase) {
  constexpr double kLargestCurieTemperature = 50'000.0;  // [K]
  constexpr double kLargestMoment = 1'000.0;             // [Bohr magnetons]
  const bool energies_sound = check_list(check, phase, draft.energy);
  check_list(check, phase, draft.curie_temperature);
  check_list(check, phase, draft.magnetic_moment);
  check_constant(check, draft.curie_temperature, kLargestCurieTemperature);
  check_constant(check, draft.magnetic_moment, kLargestMoment);
  // A term with a slip in `on` is likely the one that would be missed.
  if (!draft.energy_sound || !energies_sound) return;
  std::unordered_set<std::string> keys;
  for (const Term& term : phase.energy) keys.insert(term_key(term));
  check_complete(check, phase, keys, codes::kEnergyMissing, "energy",
                 draft.place + "/energy");
}

void check_volumes(const Check& check, const DraftPhase& draft, const Phase& phase) {
  const auto check_block = [&](const std::optional<DraftVolume>& added,
                               const std::optional<VolumeData>& merged,
                               const std::string& place) {
    bool sound = !added || added->sound;
    std::unordered_set<std::string> seen;
    for (const auto& [term, term_place, term_sound] :
         added ? added->terms : std::vector<Placed<VolumeTerm>>{}) {
      if (!term_sound) continue;
      std::vector<std::vector<std::string>> on;
      for (const std::string& name : term.on) on.push_back({name});
      if (!check_on(check, phase, on, term_place + "/on")) {
        sound = false;
      } else if (!seen.insert(end_member_key(term.on)).second) {
        check.problems.add(codes::kTermTwice, term_place,
                           "the volume of " + on_text(term.on) + " is given twice",
                           "keep one of the two");
      }
    }
    if (!sound || !merged) return;
    std::unordered_set<std::string> keys;
    for (const VolumeTerm& term : merged->terms) keys.insert(end_member_key(term.on));
    check_complete(check, phase, keys, codes::kVolumeMissing, "volume",
                   place + "/terms");
  };
  check_block(draft.room_volume, phase.room_volume, draft.place + "/room_volume");
  check_block(draft.hot_volume, phase.hot_volume, draft.place + "/hot_volume");
}

}  // namespace gibbsteel::parameter_file

#include "internal/family_borders.hpp"

#include <algorithm>

#include "gibbsteel/hardening_family.hpp"
#include "internal/family_mix.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

constexpr const char* kBorder = "gibbsteel.warning.335";
constexpr const char* kSeveral = "gibbsteel.warning.357";

using Names = std::vector<std::string>;

const std::string& family_of(const NamedValues& steel) {
  return hardening_family_of(steel).key;
}

void add_new(const std::string& name, Names& names) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

/// "high-speed", "high-speed and general", "high-speed, bearing and general"
std::string listed(const Names& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

/// Along one element of a steel.
struct Line {
  NamedValues steel;
  std::string element;

  std::vector<FamilyShare> shares_at(double percent) {
    steel.set(element, percent);
    return family_shares(steel);
  }
  bool between(double percent) { return is_between(by_key(shares_at(percent))); }
};

/// From where the steel is between families, or is no longer.
/// @pre it is at one end and not at the other
double edge_between(Line& line, double low, double high) {
  const bool at_low = line.between(low);
  for (int halving = 0; halving < 60; ++halving) {
    const double middle = 0.5 * (low + high);
    (line.between(middle) == at_low ? low : high) = middle;
  }
  return high;
}

/// Where the steel lies between families.
struct Stretch {
  double from, to;
  std::string before, after;  ///< families with the largest shares at its ends
  std::string other;          ///< of the largest second share within
};

std::string text_of(const Stretch& s, const std::string& element) {
  const int digits = element == "C" ? 3 : 2;
  const std::string where =
      fixed(s.from, digits) + " to " + fixed(s.to, digits) + " wt% " + element + " (";
  if (s.before != s.after) return where + s.before + " to " + s.after + ")";
  return where + s.before + ", part " + s.other + ")";
}

std::vector<Stretch> stretches(Line& line, double low, double high) {
  constexpr int kSteps = 500;
  std::vector<Stretch> found;
  bool open = false;
  double second = 0.0, before = low;
  for (int step = 0; step <= kSteps; ++step) {
    const double percent = low + (high - low) * step / kSteps;
    const auto shares = line.shares_at(percent);
    const std::string& main = shares.front().family->key;
    const bool between = is_between(by_key(shares));
    if (between && !open) {
      const double from = step == 0 ? low : edge_between(line, before, percent);
      found.push_back({from, high, main, main, ""});
      second = 0.0;
    }
    if (between) {
      found.back().after = main;
      if (shares[1].share.value > second) {
        second = shares[1].share.value;
        found.back().other = shares[1].family->key;
      }
    }
    if (!between && open) found.back().to = edge_between(line, before, percent);
    open = between;
    before = percent;
  }
  return found;
}

}  // namespace

std::optional<Warning> near_border(const NamedValues& steel_weight_percent) {
  const auto shares = family_shares(steel_weight_percent);
  if (!is_moved(shares)) return {};
  return Warning{kBorder,
                 "The steel is near the border of its family: hardening estimates lie "
                 "between those of " +
                     shares_text(by_key(shares)) + ". Name a family to take it alone."};
}

std::optional<Warning> several_families(
    const std::vector<const NamedValues*>& steels_weight_percent) {
  Names keys;
  for (const NamedValues* steel : steels_weight_percent)
    add_new(family_of(*steel), keys);
  return several_families_named(keys);
}

std::optional<Warning> several_families_named(const std::vector<std::string>& keys) {
  if (keys.size() < 2) return {};
  return Warning{
      kSeveral,
      "The steels are of the families " + listed(keys) +
          ": their hardening estimates have offsets and errors of their own."};
}

std::optional<Warning> border_within(const NamedValues& steel_weight_percent,
                                     const std::string& element, double low,
                                     double high) {
  Line line{steel_weight_percent, element};
  Names texts;
  for (const Stretch& stretch : stretches(line, low, high))
    texts.push_back(text_of(stretch, element));
  if (texts.empty()) return {};
  return Warning{kSeveral,
                 "Hardening estimates go over from one family of steels to "
                 "the next from " +
                     listed(texts) + ": that is no effect of " + element + " alone."};
}

void add_distinct(const std::optional<Warning>& warning, std::vector<Warning>& out) {
  if (warning && std::find(out.begin(), out.end(), *warning) == out.end())
    out.push_back(*warning);
}

}  // namespace gibbsteel::internal

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

  const std::string& family_at(double percent) {
    steel.set(element, percent);
    return family_of(steel);
  }
};

/// Where the family at `low` ends. @pre another one holds at `high`
double border_between(Line& line, double low, double high) {
  const std::string own = line.family_at(low);
  for (int halving = 0; halving < 60; ++halving) {
    const double middle = 0.5 * (low + high);
    (line.family_at(middle) == own ? low : high) = middle;
  }
  return high;
}

}  // namespace

std::optional<Warning> near_border(const NamedValues& steel_weight_percent) {
  const NamedValues shares = by_key(family_shares(steel_weight_percent));
  if (!is_between(shares)) return {};
  return Warning{kBorder,
                 "The steel is near the border of its family: hardening estimates lie "
                 "between those of " +
                     shares_text(shares) + ". Name a family to take it alone."};
}

std::optional<Warning> several_families(
    const std::vector<const NamedValues*>& steels_weight_percent) {
  Names keys;
  for (const NamedValues* steel : steels_weight_percent)
    add_new(family_of(*steel), keys);
  if (keys.size() < 2) return {};
  return Warning{
      kSeveral,
      "The steels are of the families " + listed(keys) +
          ": their hardening estimates have offsets and errors of their own."};
}

std::optional<Warning> border_within(const NamedValues& steel_weight_percent,
                                     const std::string& element, double low,
                                     double high) {
  constexpr int kSteps = 500;
  Line line{steel_weight_percent, element};
  Names borders;
  double before = low;
  std::string family = line.family_at(low);
  for (int step = 1; step <= kSteps; ++step) {
    const double percent = low + (high - low) * step / kSteps;
    const std::string next = line.family_at(percent);
    if (next != family)
      borders.push_back(
          fixed(border_between(line, before, percent), element == "C" ? 3 : 2) +
          " wt% " + element + " (from " + family + " to " + next + ")");
    family = next;
    before = percent;
  }
  if (borders.empty()) return {};
  return Warning{kSeveral,
                 "Hardening estimates go over from one family of steels to the "
                 "next: at " +
                     listed(borders) + "."};
}

void add_distinct(const std::optional<Warning>& warning, std::vector<Warning>& out) {
  if (warning && std::find(out.begin(), out.end(), *warning) == out.end())
    out.push_back(*warning);
}

}  // namespace gibbsteel::internal

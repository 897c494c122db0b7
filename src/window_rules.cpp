#include "internal/window_rules.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/hardening_quantities.hpp"
#include "internal/kind_names.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

using Problems = std::vector<Problem>;

void require(bool good, const char* name, double value, const char* remedy,
             Problems& problems) {
  if (!good)
    problems.push_back({"gibbsteel.input.254", name, "is " + shortest(value), remedy});
}

void check_numbers(const WindowRules& rules, Problems& problems) {
  if (rules.least_hardness)
    require(std::isfinite(*rules.least_hardness), "least_hardness",
            *rules.least_hardness, "give a number", problems);
  if (rules.least_pinning_volume_percent) {
    const double least = *rules.least_pinning_volume_percent;
    require(least > 0.0 && least < 100.0, "least_pinning_volume_percent", least,
            "give a number above 0, below 100 [vol%]", problems);
  }
  require(rules.solidus_margin >= 0.0 && std::isfinite(rules.solidus_margin),
          "solidus_margin", rules.solidus_margin, "give 0 or more [K]", problems);
}

/// What would be dropped without a word.
void check_halves(const WindowRules& rules, Problems& problems) {
  if (rules.hardness && !rules.least_hardness)
    problems.push_back(
        {"gibbsteel.input.285", "hardness",
         "is '" + rules.hardness->name() + "' without a least value",
         "give least_hardness" +
             (rules.hardness->unit().empty() ? "" : " in " + rules.hardness->unit())});
  if (!rules.pinning_kind.empty() && !rules.least_pinning_volume_percent)
    problems.push_back({"gibbsteel.input.285", "pinning_kind",
                        "is '" + rules.pinning_kind + "' without a least volume",
                        "give least_pinning_volume_percent, for instance 1"});
}

}  // namespace

void check_rules(const WindowRules& rules, const std::vector<std::string>& kinds) {
  Problems problems;
  check_numbers(rules, problems);
  check_halves(rules, problems);
  if (!rules.pinning_kind.empty() &&
      std::find(kinds.begin(), kinds.end(), rules.pinning_kind) == kinds.end())
    problems.push_back(no_such_kind(kinds, rules.pinning_kind, "pinning_kind"));
  if (!problems.empty()) throw InputError(std::move(problems));
}

Quantity hardness_of(const WindowRules& rules) {
  return rules.hardness ? *rules.hardness : quantities::hardness_hrc();
}

Quantity pinning_of(const WindowRules& rules) {
  return rules.pinning_kind.empty() ? quantities::carbide_volume_percent()
                                    : quantities::volume_percent(rules.pinning_kind);
}

}  // namespace gibbsteel::internal

#pragma once
/// The rules of a hardening window, checked and completed.

#include "gibbsteel/hardening_window.hpp"

namespace gibbsteel::internal {

/// @param kinds  of the parameter set
/// @throws InputError, with every problem: gibbsteel.input.254, .285, .205
void check_rules(const WindowRules& rules, const std::vector<std::string>& kinds);

/// A rule on what shall have a least value was given.
inline bool has_hardness_rule(const WindowRules& rules) {
  return rules.least_hardness.has_value();
}

/// What shall have the least value.
Quantity hardness_of(const WindowRules& rules);

/// What shall be there to keep grains small.
Quantity pinning_of(const WindowRules& rules);

}  // namespace gibbsteel::internal

#pragma once
/// Where hardening estimates go over from one family of steels to the next: a
/// composition near a border, or several families side by side.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/state.hpp"

namespace gibbsteel::internal {

/// gibbsteel.warning.335, when the steel lies so far between families that its
/// estimates are moved.
std::optional<Warning> near_border(const NamedValues& steel_weight_percent);

/// gibbsteel.warning.357, when the steels are of several families.
std::optional<Warning> several_families(
    const std::vector<const NamedValues*>& steels_weight_percent);

/// The same of their keys, each once: "general", "high-speed".
std::optional<Warning> several_families_named(const std::vector<std::string>& keys);

/// gibbsteel.warning.357, when the steel lies between families somewhere as one element
/// goes from `low` to `high`, the others as in `steel_weight_percent` [wt%]. Stretches
/// shorter than a 500th of the range may be missed.
std::optional<Warning> border_within(const NamedValues& steel_weight_percent,
                                     const std::string& element, double low,
                                     double high);

/// Appends the warning when there is one that is not yet in the list.
void add_distinct(const std::optional<Warning>& warning, std::vector<Warning>& out);

}  // namespace gibbsteel::internal

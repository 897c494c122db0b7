#pragma once
/// What quantities say about their values, each told once.

#include <span>
#include <vector>

#include "gibbsteel/quantity.hpp"

namespace gibbsteel::internal {

/// Appends the warnings of a quantity for a state that are not yet in the list; for one
/// by family also that the steel is near a border.
void add_warnings(const Quantity& quantity, const State& state,
                  std::vector<Warning>& out);

/// Appends the warning when there is none of its code in the list.
void add_new_code(const Warning& warning, std::vector<Warning>& out);

/// Of the states in which it has a value.
std::vector<Warning> warnings_where_known(const Quantity& quantity,
                                          const std::vector<const State*>& states);

}  // namespace gibbsteel::internal

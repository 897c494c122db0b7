#pragma once
/// What is asked of quantities before a soak is spent on them.

#include <span>
#include <string>
#include <vector>

#include "gibbsteel/quantity.hpp"

namespace gibbsteel::internal {

/// @throws InputError gibbsteel.input.201: `symbol` is no element
void require_element(const std::string& symbol);

/// @throws InputError gibbsteel.input.205, .206: see Quantity::problems()
void require_known(std::span<const Quantity> quantities, const ParameterSet& set);

/// gibbsteel.input.252 (not finite) or .340 (no state can have it).
void check_wish(const Quantity& quantity, double wanted, const std::string& place,
                std::vector<Problem>& problems);

/// Both for one quantity and the value that it is to have.
/// @throws InputError gibbsteel.input.205, .206, .252, .340
void require_possible(const Quantity& quantity, double value, const ParameterSet& set);

}  // namespace gibbsteel::internal

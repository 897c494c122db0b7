#pragma once
/// What searches are about, by the name of their quantity: a long hold, or a soak of
/// minutes although the states that they soak are long holds.

#include <string>

namespace gibbsteel::internal {

/// Names of quantities that are about a soak of minutes end so, or go on with minutes.
inline constexpr const char* kShortSoakName = ", short soak";
inline constexpr const char* kTimedSoakName = ", timed soak of ";

/// "long-hold limit", "short-soak limit" or "timed soak of 30 min".
std::string condition_of(const std::string& quantity);

/// The caution that fits, see text_table.hpp.
std::string caution_of(const std::string& quantity);

/// After the name of what is that of the long hold beside such a quantity:
/// ", long hold", or nothing.
std::string long_hold_mark(const std::string& quantity);

}  // namespace gibbsteel::internal

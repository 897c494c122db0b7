#pragma once
/// What searches are about, by the name of their quantity: a long hold, or a soak of
/// minutes although the states that they soak are long holds.

#include <optional>
#include <string>

#include "gibbsteel/units.hpp"

namespace gibbsteel::internal {

/// Names of quantities that are about a soak of minutes go on so, then with minutes and
/// with what is not usual of the annealed steel.
inline constexpr const char* kShortSoakName = ", short soak";
inline constexpr const char* kTimedSoakName = ", timed soak of ";

/// ", M3C of 0.4 micrometre, annealed at 650 C": what is given and not usual.
std::string unusual(double particle_micrometres,
                    const std::optional<Temperature>& annealed_at);

/// "long-hold limit", "short-soak limit" or "timed soak of 30 min", with unusual().
std::string condition_of(const std::string& quantity);

/// The caution that fits, see text_table.hpp.
std::string caution_of(const std::string& quantity);

/// After the name of what is that of the long hold beside such a quantity:
/// ", long hold", or nothing.
std::string long_hold_mark(const std::string& quantity);

}  // namespace gibbsteel::internal

#pragma once
/// Minutes and particle size of timed soaks: what is refused, how minutes are written.

#include <string>
#include <vector>

namespace gibbsteel::internal {

/// Size and diffusion are known to this factor in time.
inline constexpr double kTimeFactor = 3.0;
inline constexpr double kMostMinutes = 1e5;

/// @throws InputError gibbsteel.input.287, every problem
void check_soak_time(const std::vector<double>& minutes, double micrometres);

/// "30 min", "2.5 min".
std::string minutes_text(double minutes);

/// Place of what is wrong with a state after a time: "state after 5 min".
std::string after(double minutes);
inline constexpr const char* kLongerOrHotter =
    "take a longer time or a higher temperature";

}  // namespace gibbsteel::internal

#pragma once
/// Minutes and particle size of timed soaks: what is refused, how minutes are written.

#include <string>
#include <vector>

namespace gibbsteel::internal {

/// @throws InputError gibbsteel.input.287, every problem
void check_soak_time(const std::vector<double>& minutes, double micrometres);

/// "30 min", "2.5 min".
std::string minutes_text(double minutes);

}  // namespace gibbsteel::internal

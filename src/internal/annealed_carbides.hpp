#pragma once
/// The annealed condition that a short-soak limit starts from, and what is refused.

#include <string>
#include <vector>

#include "gibbsteel/short_soak_limit.hpp"
#include "internal/carbide_balance.hpp"

namespace gibbsteel::internal {

inline constexpr const char* kCementite = "M3C";
inline constexpr double kColdestAnnealing = 600.0;  ///< where the file ends [C]

/// @throws InputError gibbsteel.input.284, always
[[noreturn]] void refuse_limit(const std::string& place, const std::string& what,
                               const std::string& remedy);

/// At the temperature that is asked for; else at 700 C, or 10 C below A1 where that is
/// lower, down to 600 C.
State annealed_state(const Steel& steel, const std::optional<Temperature>& asked_for,
                     const SoakOptions& options);

/// Kinds of the annealed condition that are not matrix, each with all occurrences.
std::vector<CarbideShare> annealed_carbides(const State& annealed);

bool is_cementite(const CarbideShare& share);

/// @throws InputError gibbsteel.input.284
void check_annealed(const State& annealed, const std::vector<CarbideShare>& shares);

}  // namespace gibbsteel::internal

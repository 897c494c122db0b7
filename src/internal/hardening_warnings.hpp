#pragma once
/// What to know about hardening estimates: codes 330 to 338, and the warnings of the
/// state that matter to them.

#include "gibbsteel/hardening.hpp"

namespace gibbsteel::internal {

/// Estimates whose bands stand in a table.
struct BandsShown {
  bool measured = false;  ///< any that was compared with measurements
  bool hardness = false;  ///< of them
  bool grain_limit = false;
};

/// "low to high: ...", what the bands are; empty without one.
std::string bands_are(const BandsShown& shown);

/// Stands in the source of a hardness whose offset rests on soaks with that file.
inline constexpr const char* kByShippedFile = "computed with the shipped file";

/// What as-quenched hardness is.
inline constexpr const char* kFullyMartensitic =
    "As-quenched hardness is that of a fully martensitic quench, no pearlite, no "
    "bainite: section, quench and hardenability are not considered.";

/// Codes 330 to 338, without the warnings of the state.
/// @param by_mass  mass fractions stand for volume fractions
std::vector<Warning> estimate_warnings(const State& state, bool by_mass,
                                       const HardeningEstimates& result);

/// Appends them, and the warnings of the state, to result.warnings.
void check_hardening(const State& state, bool by_mass, HardeningEstimates& result);

/// The caution that fits the state, by the warning that it hands on.
std::string caution_of(const HardeningEstimates& result);

}  // namespace gibbsteel::internal

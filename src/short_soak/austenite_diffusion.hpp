#pragma once
/// Diffusion of metals in austenite.
///
///   D = D_0 exp(-Q / RT)                                                      Eq. (B4)
///
/// Tracer diffusion in iron rich austenite without carbon; published values for one
/// element differ by a factor of two to four, and carbon speeds metals up. All from
/// memory, with the sources that they are remembered from, in the source file.

#include <optional>
#include <string_view>

#include "gibbsteel/units.hpp"

namespace gibbsteel::internal {

/// [m2/s]; nothing for an element that is not in the table.
std::optional<double> diffusion_in_austenite(std::string_view element, Temperature t);

}  // namespace gibbsteel::internal

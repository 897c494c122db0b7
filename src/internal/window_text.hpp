#pragma once
/// How a hardening window is told.

#include "gibbsteel/hardening_window.hpp"

namespace gibbsteel::internal {

/// One sentence; everything but the text must be filled.
std::string window_text(const HardeningWindow& window);

/// "30 C below 1228 C, the low end of the start of melting of AISI M2, 1240 C +-12"
/// "the low end of what is known to be free of melt of AISI M42, 1210 C +-5, less 14 C
/// for more carbon"
/// @param margin  of what was seen to melt [K]; without meaning for the others
/// @param sooner  see sooner_by_carbon() [K]
std::string solidus_text(const SolidusBound& bound, double margin, double sooner,
                         TemperatureUnit unit);

}  // namespace gibbsteel::internal

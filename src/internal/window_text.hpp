#pragma once
/// How a hardening window is told.

#include "gibbsteel/hardening_window.hpp"

namespace gibbsteel::internal {

/// One sentence; everything but the text must be filled.
std::string window_text(const HardeningWindow& window);

/// "the start of melting of AISI M2, 1240 C (+-12)"
std::string solidus_text(const SolidusBound& bound, TemperatureUnit unit);

}  // namespace gibbsteel::internal

#pragma once
/// What to know about a hardening window besides its ends.

#include "gibbsteel/hardening_window.hpp"

namespace gibbsteel::internal {

/// How far a window is kept away from melting.
enum class MeltingRules {
  given,        ///< by what is known of a similar steel, or by a computed solidus
  no_liquid,    ///< the parameter set has no liquid, and nothing else is known
  not_allowed,  ///< it has one that was not allowed to form, and nothing else is known
};

/// @param window   concluded but for its remarks
/// @param stopped  why the search ended early; else empty
/// @param reached  how far it came
std::vector<std::string> window_remarks(const HardeningWindow& window,
                                        const WindowRules& rules, MeltingRules melting,
                                        const std::string& stopped,
                                        Temperature reached);

}  // namespace gibbsteel::internal

#pragma once
/// What to know about a hardening window besides its ends.

#include "gibbsteel/hardening_window.hpp"

namespace gibbsteel::internal {

/// Where no rule keeps a window away from melting: why, and what to do about it.
std::string no_melting_known(const ParameterSet& set);

/// @param window   concluded but for its remarks
/// @param melting  no_melting_known(), or empty
/// @param stopped  why the search ended early; else empty
/// @param reached  how far it came
std::vector<std::string> window_remarks(const HardeningWindow& window,
                                        const WindowRules& rules,
                                        const std::string& melting,
                                        const std::string& stopped,
                                        Temperature reached);

}  // namespace gibbsteel::internal

#pragma once
/// Words on a section map.

#include <string>
#include <vector>

namespace gibbsteel::internal {

/// "austenite + M3C"; two of a kind: "ferrite (two)".
std::string field_label(const std::vector<std::string>& kinds);

}  // namespace gibbsteel::internal

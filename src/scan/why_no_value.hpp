#pragma once
/// Why a quantity has no value in a soak that is known.

#include <string>

#include "gibbsteel/quantity.hpp"

namespace gibbsteel::internal {

/// Where nothing better can be said.
inline constexpr const char* kNoValueThere = "the quantity has no value there";

/// "no M6C", "no austenite", or kNoValueThere.
std::string why_no_value(const Quantity& quantity, const State& state);

/// "no austenite" -> ": no austenite"; empty where the reason says nothing.
std::string reason_text(const std::string& reason);

}  // namespace gibbsteel::internal

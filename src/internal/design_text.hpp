#pragma once
/// The sentence of a design.

#include <string>

#include "gibbsteel/design.hpp"

namespace gibbsteel::internal {

std::string sentence_of(const Design& design);

}  // namespace gibbsteel::internal

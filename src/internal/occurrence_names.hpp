#pragma once
/// Unique names for the occurrences of one state.

#include <vector>

#include "gibbsteel/assemblage.hpp"

namespace gibbsteel::internal {

/// The largest of a kind keeps the kind as its name. A smaller one says in which metal
/// it is richer than the largest ("ferrite, chromium-rich"); where that is taken, it
/// names the next metal too ("ferrite, chromium- and vanadium-rich").
/// @param all  largest first
void name_occurrences(std::vector<Occurrence>& all);

}  // namespace gibbsteel::internal

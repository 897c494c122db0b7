#pragma once
/// Sweeps along lines, every point beside a cold soak, and their judges: the phases of
/// neighbours, convexity, the search for phase changes.

#include "long/outcome.hpp"

namespace gibbsteel::long_run {

/// Sweeps one line and hears the judges.
/// @param search_changes  on a line of temperatures, also find all phase changes and
///                        hold every point against its field
Outcome sweep_line(const SharedParameters& set, std::size_t number,
                   bool search_changes);

/// The point of a line in words.
std::string text(const Line& line, std::size_t point);

}  // namespace gibbsteel::long_run

#pragma once
/// The printed tables of a long run.

#include <functional>
#include <string>

#include "long/outcome.hpp"

namespace gibbsteel::long_run {

/// Words for a member of a part.
using Describe = std::function<std::string(std::size_t part, std::size_t member)>;

/// @param unit  "conditions" or "points"
std::string summary(const Outcome& outcome, const std::string& unit,
                    const Describe& describe);

}  // namespace gibbsteel::long_run

#pragma once
/// Wall time of a solve.

#include <functional>

#include "outcome.hpp"

namespace gibbsteel::contest {

/// Solves five times, fewer (at least once) when `most_seconds` are used up, more when
/// all are too short for the clock, and judges the last answer. The time is the median.
Outcome measure(const Task& task, const std::function<Answer()>& solve,
                double most_seconds = 1.0);

}  // namespace gibbsteel::contest

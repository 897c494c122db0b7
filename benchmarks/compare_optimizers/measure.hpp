#pragma once
/// Processor time of a solve.

#include <functional>

#include "outcome.hpp"

namespace gibbsteel::contest {

/// Solves five times, fewer (at least once) when `most_seconds` are used up, and judges
/// the last answer. A solve that is short for the clock is timed as the mean of many.
/// The time is the median.
Outcome measure(const Task& task, const std::function<Answer()>& solve,
                double most_seconds = 1.0);

}  // namespace gibbsteel::contest

#pragma once
/// A start that holds the elements, made from one that does not.

#include "task.hpp"

namespace gibbsteel::contest {

/// The sets with their compositions, all amounts made smaller by one factor so that
/// they hold no more than half of any element, and austenite from the rest, in place of
/// the first set. Solvers that keep to the bounds never reach the balance from a start
/// without it.
/// @param sets  the first of them is austenite, with every element
Sets balanced(const Task& task, Sets sets);

}  // namespace gibbsteel::contest

#pragma once
/// Status and sentence of a composition search from its numbers.

#include "gibbsteel/composition_for.hpp"

namespace gibbsteel::internal {

/// Fills `status` and `text`.
void conclude(CompositionSearch& search);

}  // namespace gibbsteel::internal

#pragma once
/// Bands from the derivatives at the nominal state.

#include "gibbsteel/tolerance.hpp"

namespace gibbsteel::internal {

/// Fills slope, scatter and share of every contribution and the first-order band of
/// every quantity, Eq. (U1).
void fill_first_order(const Steel& steel, Temperature t,
                      const std::vector<Quantity>& quantities,
                      const SoakOptions& options, ToleranceBand& band);

}  // namespace gibbsteel::internal

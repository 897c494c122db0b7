#pragma once
/// Which corner of the box gives the lowest and the highest value.

#include "gibbsteel/tolerance.hpp"
#include "tolerance/samples.hpp"

namespace gibbsteel::internal {

/// Starts from the corner that the slopes (or, without them, the samples) point to, and
/// exchanges one coordinate at a time, always the best one, until no single exchange
/// improves the value. Fills lowest_corner and highest_corner of every quantity,
/// corners, unusable_corners and cancelled of the band.
void search_corners(const SoakAt& soak_at, const std::vector<Quantity>& quantities,
                    const ToleranceOptions& options, ToleranceBand& band);

}  // namespace gibbsteel::internal

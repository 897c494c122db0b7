#pragma once
/// A box of site fractions and what follows from every sublattice summing to one.

#include <span>
#include <vector>

#include "internal/compiled_phase.hpp"
#include "proof/interval.hpp"

namespace gibbsteel::internal {

/// One interval per constituent, within [0, 1].
using Box = std::vector<Interval>;

/// All compositions of a phase.
Box whole_box(const CompiledPhase& phase);

/// Narrows the box to what sums of one allow.
/// @return false when no composition of the phase lies in it
bool narrow_to_sums(const CompiledPhase& phase, Box& box);

/// A composition near the middle of the box, each site fraction above zero, as thin
/// intervals that hold a point which sums to one exactly. The box must have passed
/// narrow_to_sums.
void centre_of(const CompiledPhase& phase, const Box& box, Box& centre);

/// A composition widened to thin intervals that hold a point summing to one exactly.
void thin_box(const CompiledPhase& phase, std::span<const double> y, Box& thin);

/// Least value of slope . (y - centre) over the compositions in the box [J/mol];
/// by weak duality a lower bound whatever the rounding.
double least_linear(const CompiledPhase& phase, const Box& box, const Box& centre,
                    std::span<const double> slope);

}  // namespace gibbsteel::internal

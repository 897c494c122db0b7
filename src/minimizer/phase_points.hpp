#pragma once
/// Order of the phases in a result.

#include "gibbsteel/minimizer.hpp"
#include "minimizer/conditions.hpp"

namespace gibbsteel::internal {

/// Largest amount of atoms first; stable.
void sort_by_atoms(const Conditions& conditions, std::vector<PhasePoint>& present);

}  // namespace gibbsteel::internal

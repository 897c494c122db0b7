#pragma once
/// Where to start from when a minimum of D below the plane lies close to a present set
/// of the same phase: near a consolute point, or where the moment changes sign and the
/// energy has a kink. A small new set beside the present one then goes nowhere, because
/// the present one has to move as well.

#include "minimizer/certificate.hpp"

namespace gibbsteel::internal {

/// The present sets with the closest one moved to the lowest minimum; with it in two
/// halves, there and as far on the other side; with the halves at the lowest minimum
/// and the next one that is close too. None when no set is close.
/// @param below  minima below the plane, the lowest first
std::vector<std::vector<PhaseSet>> twin_starts(const Conditions& conditions,
                                               const std::vector<PhaseSet>& sets,
                                               std::span<const AbsentMinimum> below);

}  // namespace gibbsteel::internal

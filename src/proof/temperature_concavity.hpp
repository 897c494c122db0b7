#pragma once
/// Where the Gibbs energy of every composition of a phase is concave in temperature
/// (its heat capacity is nowhere negative).

#include "gibbsteel/phase_system.hpp"

namespace gibbsteel::internal {

/// True when d2G/dT2 <= 0 is shown for all compositions of all phases of the system
/// between two temperatures [K]: no end member may have a negative heat capacity, by
/// more than what interactions can take from it, and no curve may change its piece in
/// between. Ideal mixing is linear in T and magnetic ordering, Eq. (G5), is concave.
bool concave_in_temperature(const PhaseSystem& system, double from, double to);

}  // namespace gibbsteel::internal

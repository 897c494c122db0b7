#pragma once
/// Where the Curie temperature or the moment of a phase changes sign, its effective
/// value, Eq. (G6), and so the energy has a kink, and a minimum of D may lie on either
/// side of it, closer together than starts from the columns can tell apart.

#include "minimizer/phase_sets.hpp"

namespace gibbsteel::internal {

/// Site fractions just across every such kink that is close to y, where the magnetic
/// energy is worth it.
std::vector<std::vector<double>> kink_starts(const CompiledPhase& phase, double kelvin,
                                             std::span<const double> y);

}  // namespace gibbsteel::internal

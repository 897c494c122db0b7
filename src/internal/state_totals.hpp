#pragma once
/// From occurrences to percents, and to what a state sums up over them.

#include <vector>

#include "gibbsteel/state.hpp"

namespace gibbsteel::internal {

/// Turns mole_percent, given as moles of atoms on any scale, into percents of atoms,
/// mass and volume.
void fill_percents(std::vector<Occurrence>& all);

/// Largest volume first; by mass where volume is unknown.
void sort_by_size(std::vector<Occurrence>& all);

/// Matrix, carbide totals and density from the occurrences of the state.
void fill_totals(State& state);

}  // namespace gibbsteel::internal
